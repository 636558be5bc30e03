import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { weightedKappa } from "../agreement/weighted-kappa.ts";
import { completeInputs } from "./complete-inputs.ts";
import { sources } from "./sources.ts";

/** Agreement of two graders beyond chance: plain, linear and quadratic weights. */
export const kappa: Method = {
  id: "weighted-kappa",
  name: "Weighted kappa",
  answers: "agreement",
  needs: { rows: 2 },
  inputs: {
    rater_a: { kind: "grades", meaning: "grades of the first, as numbers" },
    rater_b: { kind: "grades", meaning: "grades of the second" },
    levels: { kind: "quantities", optional: true, meaning: "all grades, lowest first" },
  },
  fields: {
    n: { meaning: "pieces" },
    agreement: { meaning: "share with the same grade" },
    kappa: { meaning: "plain kappa" },
    kappa_se: { meaning: "its standard error" },
    kappa_linear: { meaning: "linear weights" },
    kappa_linear_se: { meaning: "its standard error" },
    kappa_quadratic: { meaning: "quadratic weights" },
    kappa_quadratic_se: { meaning: "its standard error" },
  },
  source: sources.fleiss,
  run: (inputs) => {
    const complete = completeInputs(inputs, ["rater_a", "rater_b"], [], { rows: 2 });
    if (!complete.ok) return complete;
    const { rater_a: a, rater_b: b } = complete.value.arrays as { rater_a: Float64Array; rater_b: Float64Array };
    const levels = Array.isArray(inputs.levels)
      ? inputs.levels.map(Number)
      : [...new Set([...a, ...b])].sort((one, other) => one - other);
    const [first, second] = [a, b].map((grades) => Array.from(grades, (grade) => levels.indexOf(grade))) as [
      number[],
      number[],
    ];
    if ([...first, ...second].some((code) => code < 0))
      return declined("out-of-domain", { name: "a grade", needed: "one of the levels" });
    const plain = weightedKappa(first, second, levels.length, 0);
    const [linear, quadratic] = [
      weightedKappa(first, second, levels.length, 1),
      weightedKappa(first, second, levels.length, 2),
    ];
    if (levels.length < 2 || !Number.isFinite(plain.value)) return declined("no-spread", { column: "grades" });
    return succeeded({
      n: a.length,
      agreement: first.filter((code, i) => code === second[i]).length / a.length,
      kappa: plain.value,
      kappa_se: plain.standardError,
      kappa_linear: linear.value,
      kappa_linear_se: linear.standardError,
      kappa_quadratic: quadratic.value,
      kappa_quadratic_se: quadratic.standardError,
    });
  },
};

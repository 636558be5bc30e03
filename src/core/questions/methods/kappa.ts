import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { gradedColumns } from "../agreement/graded-columns.ts";
import { weightedKappa } from "../agreement/weighted-kappa.ts";
import { knownNumber } from "../inputs/known-number.ts";
import { sources } from "./sources.ts";

/** Agreement of two graders beyond chance: plain, linear and quadratic weights. */
export const kappa: Method = {
  id: "weighted-kappa",
  name: "Weighted kappa",
  answers: "agreement",
  needs: { rows: 2 },
  inputs: {
    rater_a: { kind: "grades", meaning: "grades of the first, numbers or words; null where not graded" },
    rater_b: { kind: "grades", meaning: "grades of the second" },
    levels: {
      kind: "grades",
      optional: true,
      meaning: "all grades, lowest first; words have no order without it, and numbers stand by size",
    },
  },
  fields: {
    n: { meaning: "pieces" },
    agreement: { meaning: "share with the same grade" },
    kappa: { meaning: "plain kappa" },
    kappa_se: { meaning: "its standard error" },
    kappa_linear: { meaning: "linear weights; withheld for words without levels, as what follows" },
    kappa_linear_se: { meaning: "its standard error" },
    kappa_quadratic: { meaning: "quadratic weights" },
    kappa_quadratic_se: { meaning: "its standard error" },
    set_aside: { meaning: "pieces that one of the two did not grade" },
  },
  source: sources.fleiss,
  run: (inputs) => {
    const graded = gradedColumns([inputs.rater_a, inputs.rater_b], ["rater_a", "rater_b"], inputs.levels);
    if (!graded.ok) return graded;
    const { codes, levels, isOrdered } = graded.value;
    const [a = new Int32Array(), b = new Int32Array()] = codes;
    const both = Array.from(a, (_, at) => at).filter((at) => (a[at] ?? -1) >= 0 && (b[at] ?? -1) >= 0);
    if (both.length < 2) return declined("too-few-records", { have: both.length, need: 2 });
    const given = new Set(both.flatMap((at) => [a[at] ?? -1, b[at] ?? -1]));
    const scale = levels.map((_, code) => code).filter((code) => inputs.levels !== undefined || given.has(code));
    const placed = (column: Int32Array) => Int32Array.from(both, (at) => scale.indexOf(column[at] ?? -1));
    const [first, second] = [placed(a), placed(b)];
    const plain = weightedKappa(first, second, scale.length, 0);
    if (scale.length < 2 || !Number.isFinite(plain.value)) return declined("no-spread", { column: "grades" });
    const weighted = (power: 1 | 2) =>
      isOrdered ? weightedKappa(first, second, scale.length, power) : { value: Number.NaN, standardError: Number.NaN };
    const [linear, quadratic] = [weighted(1), weighted(2)];
    return succeeded({
      n: both.length,
      agreement: first.filter((code, i) => code === second[i]).length / both.length,
      kappa: plain.value,
      kappa_se: plain.standardError,
      kappa_linear: knownNumber(linear.value),
      kappa_linear_se: knownNumber(linear.standardError),
      kappa_quadratic: knownNumber(quadratic.value),
      kappa_quadratic_se: knownNumber(quadratic.standardError),
      set_aside: a.length - both.length,
    });
  },
};

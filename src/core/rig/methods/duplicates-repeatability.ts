import { declined, type Method, succeeded } from "../../base/index.ts";
import { compensatedSum, mean } from "../../numerics/index.ts";
import { inputNumbers } from "./input-numbers.ts";

/**
 * Repeatability out of pieces that were measured twice: s = sqrt(sum d^2 / (2 n)), and the limit that two readings of one piece rarely pass, 2.8 s.
 * differences: first less second reading of each piece; or first and second as lists. The spread of all readings would count the pieces' own spread.
 * Source: ISO 5725-6:1994, 4.1 (2.8 is 1.96 sqrt 2, rounded); Bland and Altman (1996), BMJ 313, 744.
 */
export const duplicatesRepeatability: Method = {
  id: "duplicates-repeatability",
  name: "Repeatability from pieces measured twice",
  answers: "rig",
  needs: { rows: 1 },
  inputs: {
    differences: { kind: "quantities", optional: true, meaning: "first less second reading of each piece" },
    first: { kind: "quantities", optional: true, meaning: "first reading of each piece, instead of differences" },
    second: { kind: "quantities", optional: true, meaning: "second reading" },
  },
  fields: {
    n: { meaning: "pieces measured twice" },
    s_repeat: { meaning: "standard deviation of one reading under repetition" },
    mean_difference: { meaning: "mean of first less second: a drift between the two" },
    repeatability_limit: { meaning: "2.8 s" },
    s_without_drift: { meaning: "the same with the mean difference taken out" },
  },
  source: { citation: "ISO 5725-6:1994, clause 4.1; Bland and Altman (1996), BMJ 313, 744", basis: "memory" },
  run: (inputs) => {
    const [first, second] = [inputNumbers(inputs.first), inputNumbers(inputs.second)];
    if (inputs.differences === undefined && first.length !== second.length)
      return declined("out-of-domain", { name: "second", needed: "a list as long as first" });
    const all =
      inputs.differences === undefined
        ? first.map((one, i) => one - (second[i] as number))
        : inputNumbers(inputs.differences);
    const differences = all.filter((one) => !Number.isNaN(one));
    const n = differences.length;
    if (n < 1) return declined("too-few-records", { have: 0, need: 1 });
    const s = Math.sqrt(compensatedSum(differences.map((one) => one ** 2)) / (2 * n));
    if (!Number.isFinite(s)) return declined("not-finite", { name: "s_repeat" });
    const drift = mean(differences);
    return succeeded({
      n,
      s_repeat: s,
      mean_difference: drift,
      repeatability_limit: 2.8 * s,
      s_without_drift:
        n > 1 ? Math.sqrt(compensatedSum(differences.map((one) => (one - drift) ** 2)) / (2 * (n - 1))) : null,
    });
  },
};

import { declined, type Method, succeeded } from "../../base/index.ts";
import { tQuantile, tUpperTail } from "../../numerics/index.ts";
import { type MeanDifference, meanDifference, twoSamples } from "../../questions/index.ts";

/** Interval of a mean difference at a level: difference ± t(1/2 + level/2) · standard error. */
function differenceInterval(found: MeanDifference, level: number): { readonly low: number; readonly high: number } {
  const half = tQuantile(0.5 + level / 2, found.degreesOfFreedom) * found.standardError;
  return { low: found.difference - half, high: found.difference + half };
}

export const equivalence = {
  id: "equivalence",
  name: "The same within a margin, by two one-sided Welch tests",
  answers: "verdict",
  needs: { rows: 4 },
  inputs: {
    a: { kind: "quantities", meaning: "values of the first group" },
    b: { kind: "quantities", meaning: "values of the second group, in the same unit" },
    margin: { kind: "quantity", meaning: "how far apart still counts as the same; above zero" },
    alpha: { kind: "number", optional: true, meaning: "level of each one-sided test, 0.05 unless given" },
  },
  fields: {
    difference: { meaning: "mean of a less mean of b" },
    df: { meaning: "degrees of freedom" },
    p_above_minus_margin: { meaning: "upper tail against a difference of minus the margin" },
    p_below_plus_margin: { meaning: "lower tail against a difference of the margin" },
    p: { meaning: "the larger of the two" },
    ci90_low: { meaning: "lower end of the interval at level 1 − 2 alpha" },
    ci90_high: { meaning: "upper end of the interval at level 1 − 2 alpha" },
    equivalent: { meaning: "whether that interval lies within the margin" },
  },
  source: { citation: "Schuirmann (1987), J. Pharmacokinet. Biopharm. 15, 657–680", basis: "published" },
  run: (inputs) => {
    const margin = inputs.margin;
    const alpha = typeof inputs.alpha === "number" ? inputs.alpha : 0.05;
    if (typeof margin !== "number" || !(margin > 0))
      return declined("out-of-domain", { name: "margin", needed: "an amount above zero" });
    if (!(alpha > 0 && alpha < 0.5))
      return declined("out-of-domain", { name: "alpha", needed: "a number between 0 and 0.5" });
    const samples = twoSamples(inputs, 2);
    if (!samples.ok) return samples;
    const found = meanDifference(samples.value);
    if (!found.ok) return found;
    const { difference, standardError, degreesOfFreedom } = found.value;
    const above = tUpperTail((difference + margin) / standardError, degreesOfFreedom);
    const below = tUpperTail((margin - difference) / standardError, degreesOfFreedom);
    const interval = differenceInterval(found.value, 1 - 2 * alpha);
    return succeeded({
      difference,
      df: degreesOfFreedom,
      p_above_minus_margin: above,
      p_below_plus_margin: below,
      p: Math.max(above, below),
      ci90_low: interval.low,
      ci90_high: interval.high,
      equivalent: interval.low > -margin && interval.high < margin,
    });
  },
} as const satisfies Method;

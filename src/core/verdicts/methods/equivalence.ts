import { declined, type Method, type Outcome, succeeded } from "../../base/index.ts";
import { tQuantile, tUpperTail } from "../../numerics/index.ts";
import { groupMoments, welchDifference } from "../../questions/index.ts";

/** Mean of the differences with its standard error and degrees of freedom. */
export type MeanDifference = {
  readonly difference: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
};

/**
 * Welch's difference of two means: mean(a) − mean(b), se² = va/na + vb/nb, with the degrees of freedom of Satterthwaite.
 * `a`, `b`: at least two finite values each, one unit. Refused where neither varies.
 * Source: Welch (1947), Biometrika 34, 28–35.
 */
export function meanDifference(a: ArrayLike<number>, b: ArrayLike<number>): Outcome<MeanDifference> {
  const fewer = Math.min(a.length, b.length);
  if (fewer < 2) return declined("too-few-records", { have: fewer, need: 2 });
  const first = a[0] as number;
  const values = Float64Array.from([...Array.from(a), ...Array.from(b)], (value) => value - first);
  const codes = Int32Array.from(values, (_, at) => (at < a.length ? 0 : 1));
  const found = welchDifference(groupMoments(values, codes, 2), 0, 1);
  return found.standardError > 0 ? succeeded(found) : declined("no-spread", { column: "both" });
}

/** Interval of a mean difference at a level: difference ± t(1/2 + level/2) · standard error. */
export function differenceInterval(
  found: MeanDifference,
  level: number,
): { readonly low: number; readonly high: number } {
  const half = tQuantile(0.5 + level / 2, found.degreesOfFreedom) * found.standardError;
  return { low: found.difference - half, high: found.difference + half };
}

const numbers = (value: unknown) =>
  Float64Array.from((value ?? []) as ArrayLike<number>).filter((each) => Number.isFinite(each));

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
    const found = meanDifference(numbers(inputs.a), numbers(inputs.b));
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

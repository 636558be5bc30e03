import { declined, type Outcome, succeeded } from "../../base/index.ts";
import type { TwoSamples } from "../inputs/two-samples.ts";
import { groupMoments } from "./group-moments.ts";
import { welchDifference } from "./welch-difference.ts";

/** Mean of a less mean of b, with the standard error and degrees of freedom of unequal spreads, and the standard error of one common spread. */
export type MeanDifference = {
  readonly difference: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
  readonly pooledError: number;
};

/**
 * The difference of two means: se^2 = va/na + vb/nb with the degrees of freedom of Satterthwaite. a, b: two finite values or more, of one unit, far from zero or
 * not. Declined where neither varies. Source: Welch (1947), Biometrika 34, 28-35.
 */
export function meanDifference({ a, b }: TwoSamples): Outcome<MeanDifference> {
  const first = a[0] as number;
  const values = Float64Array.from([...a, ...b], (value) => value - first);
  const groups = groupMoments(
    values,
    Int32Array.from(values, (_, at) => (at < a.length ? 0 : 1)),
    2,
  );
  const found = welchDifference(groups, 0, 1);
  if (!(found.standardError > 0)) return declined("no-spread", { column: "values" });
  const [one, other] = groups.variances as unknown as readonly [number, number];
  const common = (one * (a.length - 1) + other * (b.length - 1)) / (values.length - 2);
  return succeeded({ ...found, pooledError: Math.sqrt(common * (1 / a.length + 1 / b.length)) });
}

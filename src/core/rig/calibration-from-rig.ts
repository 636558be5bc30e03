// What a rig check gives to other records: the correction of a reading by date, with its uncertainty.
import type { Outcome } from "../base/index.ts";
import { declined, succeeded } from "../base/index.ts";
import { leastSquares } from "../numerics/index.ts";
import { biasLine } from "./bias-line.ts";
import type { RigErrors, RigInput } from "./rig-errors.ts";
import { rigErrors } from "./rig-errors.ts";

export type RigCalibration = {
  /** What to add to a reading (SI) taken on a day (days since 1970-01-01; NaN when not known): the bias there, turned round. */
  readonly correctionAt: (days: number, reading: number) => number;
  /** Standard uncertainty of that correction, SI. */
  readonly uncertainty: (days: number, reading: number) => number;
  /** Readings of one thing scatter by this much, SI. */
  readonly scatter: number;
};

const FEWEST = 3;

type Model = {
  readonly coefficients: Float64Array;
  readonly inverse: readonly Float64Array[];
  readonly variance: number;
};

function fitted(errors: RigErrors, columns: readonly Float64Array[]): Model {
  const fit = leastSquares([new Float64Array(errors.error.length).fill(1), ...columns], errors.error);
  return {
    coefficients: fit.coefficients,
    inverse: fit.inverse,
    variance: fit.residualSumOfSquares / fit.degreesOfFreedom,
  };
}

/**
 * Correction of readings by a rig check: −(a + b (x − middle) + c (days − middleDays)), with the terms that the check shows; b and c that it
 * does not show are left out. x is the reading turned back to the reference, (reading − a − … + b middle) / (1 + b). Days beyond the checks are
 * held at the first and last of them; an unknown day takes the middle. Uncertainty: sqrt(v' C v), C the covariance of the terms.
 * Source: JCGM 100:2008, example H.3, equations H.13 and H.15.
 */
export function calibrationFromRig(input: RigInput): Outcome<RigCalibration> {
  const errors = rigErrors(input);
  if (errors.error.length < FEWEST) return declined("too-few-records", { have: errors.error.length, need: FEWEST });
  const line = biasLine(errors);
  if (line === null) return declined("perfect-fit", { column: input.reading.name });
  const [byReference, byDate] = [line.linearity?.shown ?? false, line.drift?.shown ?? false];
  const model = fitted(errors, [
    ...(byReference ? [errors.reference.map((value) => value - line.middle)] : []),
    ...(byDate ? [errors.days.map((day) => day - line.middleDays)] : []),
  ]);
  const [constant = 0, second = 0, third = 0] = model.coefficients;
  const slope = byReference ? second : 0;
  const drift = byDate ? (byReference ? third : second) : 0;
  const since = (days: number) =>
    byDate && Number.isFinite(days) ? Math.min(line.lastDay, Math.max(line.firstDay, days)) - line.middleDays : 0;
  const above = (days: number, reading: number) =>
    (reading - line.middle - constant - drift * since(days)) / (1 + slope);
  return succeeded({
    correctionAt: (days, reading) => -(constant + slope * above(days, reading) + drift * since(days)),
    uncertainty: (days, reading) => {
      const at = [1, ...(byReference ? [above(days, reading)] : []), ...(byDate ? [since(days)] : [])];
      const form = at.reduce(
        (sum, v, i) => sum + at.reduce((row, w, j) => row + v * w * (model.inverse[i]?.[j] ?? 0), 0),
        0,
      );
      return Math.sqrt(Math.max(0, form * model.variance));
    },
    scatter: Math.sqrt(model.variance),
  });
}

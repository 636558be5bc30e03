// The bias of a rig as a line: constant, growing with what is measured, and drifting with time, as far as the records show.
import { leastSquares, mean, tQuantile } from "../numerics/index.ts";
import type { RigErrors } from "./rig-errors.ts";

export type BiasTerm = {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly standardError: number;
  readonly shown: boolean;
};

//   error = bias + linearity (reference − middle) + drift (days − middleDays)
export type BiasLine = {
  readonly middle: number;
  readonly middleDays: number;
  readonly firstDay: number;
  readonly lastDay: number;
  readonly bias: BiasTerm;
  /** Error per unit of reference, a ratio; null when one reference only. */
  readonly linearity: BiasTerm | null;
  /** Error per day; null without dates that differ. */
  readonly drift: BiasTerm | null;
  readonly residualDeviation: number;
  readonly degreesOfFreedom: number;
};

const LEVEL = 0.95;
const distinct = (values: Float64Array) => new Set(values).size;

/**
 * Least squares of the errors on reference and date, each about its middle; a term is `shown` when its 95 % interval leaves out zero.
 * errors: at least three; all with a date or the date is not used. null when the errors leave no scatter or the columns say the same.
 * Source: JCGM 100:2008, example H.3 (calibration line, centred); Draper and Smith (1998), chapter 1.
 */
export function biasLine(errors: RigErrors): BiasLine | null {
  const n = errors.error.length;
  const several = distinct(errors.reference) > 1;
  const dated = errors.days.every(Number.isFinite) && distinct(errors.days) > 1 && n > (several ? 3 : 2) + 1;
  const [middle, middleDays] = [mean(errors.reference), dated ? mean(errors.days) : 0];
  const ones = new Float64Array(n).fill(1);
  const columns = [
    ones,
    ...(several ? [errors.reference.map((value) => value - middle)] : []),
    ...(dated ? [errors.days.map((day) => day - middleDays)] : []),
  ];
  const fit = leastSquares(columns, errors.error);
  if (fit.rank < columns.length && dated) return biasLine({ ...errors, days: new Float64Array(n).fill(Number.NaN) });
  if (fit.rank < columns.length || fit.degreesOfFreedom < 1) return null;
  const variance = fit.residualSumOfSquares / fit.degreesOfFreedom;
  const size = Math.max(
    ...[errors.reading, errors.reference].map((values) =>
      values.reduce((most, value) => Math.max(most, Math.abs(value)), 0),
    ),
  );
  if (!(Math.sqrt(variance) > 1e-14 * size)) return null;
  const multiple = tQuantile((1 + LEVEL) / 2, fit.degreesOfFreedom);
  const term = (at: number): BiasTerm => {
    const value = fit.coefficients[at] ?? Number.NaN;
    const standardError = Math.sqrt(variance * (fit.inverse[at]?.[at] ?? Number.NaN));
    const half = multiple * standardError;
    return { value, low: value - half, high: value + half, standardError, shown: Math.abs(value) > half };
  };
  return {
    middle,
    middleDays,
    firstDay: dated ? errors.days.reduce((a, b) => Math.min(a, b)) : Number.NaN,
    lastDay: dated ? errors.days.reduce((a, b) => Math.max(a, b)) : Number.NaN,
    bias: term(0),
    linearity: several ? term(1) : null,
    drift: dated ? term(several ? 2 : 1) : null,
    residualDeviation: Math.sqrt(variance),
    degreesOfFreedom: fit.degreesOfFreedom,
  };
}

// Logistic regression with Firth's penalty: half the logarithm of the determinant of the information, so that separated records have an estimate too.
import { type Climbed, climbed, positiveDefinite, type Slope } from "../../numerics/index.ts";

export type Logistic = {
  /** Columns of the design, the constant among them. */
  readonly X: readonly Float64Array[];
  /** 0 or 1 for each record. */
  readonly y: Float64Array;
};

/** Information X'WX, row by row, and the fitted chance of each record. */
export function logisticInformation(
  { X, y }: Logistic,
  b: Float64Array,
): { chance: Float64Array; information: Float64Array } {
  const p = X.length;
  const chance = y.map((_, i) => {
    let eta = 0;
    for (let j = 0; j < p; j++) eta += ((X[j] as Float64Array)[i] as number) * (b[j] as number);
    return 1 / (1 + Math.exp(-eta));
  });
  const information = new Float64Array(p * p);
  for (let a = 0; a < p; a++)
    for (let c = 0; c <= a; c++) {
      let sum = 0;
      for (let i = 0; i < y.length; i++) {
        const pi = chance[i] as number;
        sum += pi * (1 - pi) * ((X[a] as Float64Array)[i] as number) * ((X[c] as Float64Array)[i] as number);
      }
      information[a * p + c] = sum;
      information[c * p + a] = sum;
    }
  return { chance, information };
}

/** Penalized log likelihood and Newton's step at b, coefficient `held` staying where it is. */
function slopeAt(data: Logistic, b: Float64Array, held: number | null, bent: boolean): Slope | null {
  const { X, y } = data;
  const p = X.length;
  const { chance, information } = logisticInformation(data, b);
  const whole = positiveDefinite(information, p);
  if (!whole) return null;
  const inverse = whole.inverse();
  let height = whole.logDeterminant / 2;
  const score = new Float64Array(p);
  // Steps by the information alone are twice too long for a record that is a group of its own, and go to and fro. The penalty bends the height as
  // well: with it each record counts 1 + leverage times.
  const bend = bent ? new Float64Array(p * p) : information;
  for (let i = 0; i < y.length; i++) {
    const pi = chance[i] as number;
    const isYes = (y[i] as number) === 1;
    // log of the chance of what was seen, without 1 - pi where that is small
    let eta = 0;
    for (let j = 0; j < p; j++) eta += ((X[j] as Float64Array)[i] as number) * (b[j] as number);
    height -= isYes ? softplus(-eta) : softplus(eta);
    let leverage = 0;
    for (let a = 0; a < p; a++)
      for (let c = 0; c < p; c++)
        leverage +=
          ((X[a] as Float64Array)[i] as number) *
          ((X[c] as Float64Array)[i] as number) *
          (inverse[a * p + c] as number);
    const pull = (y[i] as number) - pi + pi * (1 - pi) * leverage * (0.5 - pi);
    for (let j = 0; j < p; j++) score[j] = (score[j] as number) + pull * ((X[j] as Float64Array)[i] as number);
    if (!bent) continue;
    const weight = pi * (1 - pi) * (1 + leverage);
    for (let a = 0; a < p; a++)
      for (let c = 0; c < p; c++)
        bend[a * p + c] =
          (bend[a * p + c] as number) +
          weight * ((X[a] as Float64Array)[i] as number) * ((X[c] as Float64Array)[i] as number);
  }
  const free = Array.from({ length: p }, (_, j) => j).filter((j) => j !== held);
  const part = Float64Array.from(free.flatMap((a) => free.map((c) => bend[a * p + c] as number)));
  const solved = positiveDefinite(part, free.length)?.solve(free.map((j) => score[j] as number)) ?? null;
  if (free.length > 0 && !solved) return null;
  const step = new Float64Array(p);
  for (const [at, j] of free.entries()) step[j] = solved?.[at] ?? 0;
  return { height, step, gain: step.reduce((sum, value, j) => sum + value * (score[j] as number), 0) };
}

const softplus = (eta: number): number => (eta > 0 ? eta + Math.log1p(Math.exp(-eta)) : Math.log1p(Math.exp(eta)));

/**
 * The coefficients with the largest penalized likelihood, one of them held at a value where `held` says so. start: where the climb begins.
 * null where it does not converge. Source: Firth (1993), Biometrika 80, 27-38; Heinze and Schemper (2002), Statistics in Medicine 21, 2409-2419.
 */
export const firthFit = (data: Logistic, start: Float64Array, held: number | null = null): Climbed | null =>
  climbed(start, (b) => slopeAt(data, b, held, false)) ?? climbed(start, (b) => slopeAt(data, b, held, true));

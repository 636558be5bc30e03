import { power } from "../../base/index.ts";
import type { Jet } from "./taylor-jet.ts";

/** Values of a calculation at a place, by field; null where it is declined there. */
export type Evaluation = (place: readonly number[]) => Readonly<Record<string, number>> | null;

/** Step of the differences, as a share of the value (of the uncertainty where the value is 0). */
const STEP = 2 ** -9;
const NEAR = 2 ** -7;

const moved = (place: readonly number[], moves: readonly (readonly [number, number])[]): number[] => {
  const to = [...place];
  for (const [at, by] of moves) to[at] = (to[at] as number) + by;
  return to;
};

/** The exponent with which a result goes with one input, where it is a power of it with a sixth part as its finest step; null else. */
function exponentOf(value: number, above: number, below: number): number | null {
  const [up, down] = [above / value, below / value];
  if (!(up > 0) || !(down > 0)) return null;
  const exponent = Math.round((6 * Math.log(up / down)) / Math.log((1 + NEAR) / (1 - NEAR))) / 6;
  const misses = Math.abs(up / power(1 + NEAR, exponent) - 1) + Math.abs(down / power(1 - NEAR, exponent) - 1);
  return misses < 4e-14 * (1 + Math.abs(exponent)) ? exponent : null;
}

/** Slope of one field along one input by four points, or by three on one side where the other is declined. */
function slopeOf(at: (by: number) => number | null, value: number, step: number): number {
  const [one, two, back, far] = [at(step), at(2 * step), at(-step), at(-2 * step)];
  if (one !== null && two !== null && back !== null && far !== null)
    return (8 * (one - back) - (two - far)) / (12 * step);
  if (one !== null && back !== null) return (one - back) / (2 * step);
  if (one !== null && two !== null) return (4 * one - two - 3 * value) / (2 * step);
  if (back !== null && far !== null) return -(4 * back - far - 3 * value) / (2 * step);
  return Number.NaN;
}

/** Second derivatives with steps of one standard uncertainty: the curvature that the inputs' errors really meet. NaN where declined. */
function curvatures(evaluate: Evaluation, place: readonly number[], sizes: readonly number[]) {
  const n = place.length;
  const single = sizes.map((u, i) => [evaluate(moved(place, [[i, u]])), evaluate(moved(place, [[i, -u]]))] as const);
  const pairs = new Map<number, readonly (Readonly<Record<string, number>> | null)[]>();
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++) {
      const corner = (a: number, b: number) =>
        evaluate(
          moved(place, [
            [i, a * (sizes[i] as number)],
            [j, b * (sizes[j] as number)],
          ]),
        );
      pairs.set(i * n + j, [corner(1, 1), corner(1, -1), corner(-1, 1), corner(-1, -1)]);
    }
  return (field: string, value: number): Float64Array => {
    const hessian = new Float64Array(n * n);
    for (let i = 0; i < n; i++) {
      const [above, below] = single[i] as (typeof single)[number];
      hessian[i * n + i] =
        ((above?.[field] ?? Number.NaN) - 2 * value + (below?.[field] ?? Number.NaN)) / (sizes[i] as number) ** 2;
      for (let j = 0; j < i; j++) {
        const [pp, pm, mp, mm] = (pairs.get(i * n + j) ?? []).map((one) => one?.[field] ?? Number.NaN);
        const mixed =
          ((pp as number) - (pm as number) - (mp as number) + (mm as number)) /
          (4 * (sizes[i] as number) * (sizes[j] as number));
        hessian[i * n + j] = mixed;
        hessian[j * n + i] = mixed;
      }
    }
    return hessian;
  };
}

/**
 * Value, first and second derivatives of every field of a calculation that is only known by running it.
 * place: n inputs; sizes: their standard uncertainties, > 0. First derivatives are exact to rounding where a field is a power of the input (exponents in
 * sixths, judged at 1 +- 2^-7); else by central differences of fourth order with a step of 2^-9 of the input: relative 1e-9 for smooth formulas.
 * Second derivatives by steps of one standard uncertainty. NaN where the calculation declines on the way; null where it declines at the place.
 * Source: Abramowitz and Stegun 25.3.6, 25.3.23 and 25.3.26.
 */
export function numericJet(
  evaluate: Evaluation,
  place: readonly number[],
  sizes: readonly number[],
): Readonly<Record<string, Jet>> | null {
  const base = evaluate(place);
  if (!base) return null;
  const n = place.length;
  const fields = Object.keys(base);
  const gradients = new Map(fields.map((field) => [field, new Float64Array(n)] as const));
  for (const [i, x] of place.entries()) {
    const step = STEP * (x === 0 ? (sizes[i] as number) : Math.abs(x));
    const seen = new Map([-2, -1, 1, 2].map((k) => [k * step, evaluate(moved(place, [[i, k * step]]))] as const));
    const [above, below] = [1 + NEAR, 1 - NEAR].map((by) =>
      evaluate(place.map((one, j) => (j === i ? one * by : one))),
    );
    for (const field of fields) {
      const value = base[field] as number;
      const exponent =
        x === 0 || !above || !below ? null : exponentOf(value, above[field] ?? Number.NaN, below[field] ?? Number.NaN);
      const slope =
        exponent !== null ? (exponent * value) / x : slopeOf((by) => seen.get(by)?.[field] ?? null, value, step);
      (gradients.get(field) as Float64Array)[i] = slope;
    }
  }
  const hessianOf = curvatures(evaluate, place, sizes);
  return Object.fromEntries(
    fields.map((field) => {
      const value = base[field] as number;
      return [field, { value, gradient: gradients.get(field) as Float64Array, hessian: hessianOf(field, value) }];
    }),
  );
}

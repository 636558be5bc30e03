// A catalogue function over one block of rows, and its partial derivatives.
import { power } from "../base/index.ts";
import type { FormulaFunction } from "./formula-function.ts";

/** Relative step of the central difference: the third root of the double's spacing, where cutting and rounding errors are alike. */
const STEP = power(Number.EPSILON, 1 / 3);

/** Values of the function, row by row; missing where any argument is, unless it passes over the missing. */
export function functionBlocks(
  { evaluate, skipsMissing }: Pick<FormulaFunction, "evaluate" | "skipsMissing">,
  given: readonly Float64Array[],
  out: Float64Array,
  count: number,
): void {
  const [a, b] = given;
  if (given.length === 1 && a) {
    for (let i = 0; i < count; i++) out[i] = Number.isNaN(a[i]) ? Number.NaN : evaluate(a[i] as number);
    return;
  }
  if (given.length === 2 && a && b && !skipsMissing) {
    for (let i = 0; i < count; i++)
      out[i] = Number.isNaN(a[i]) || Number.isNaN(b[i]) ? Number.NaN : evaluate(a[i] as number, b[i] as number);
    return;
  }
  const row = new Array<number>(given.length).fill(0);
  for (let i = 0; i < count; i++) {
    let missing = false;
    for (let k = 0; k < given.length; k++) {
      const value = (given[k] as Float64Array)[i] as number;
      row[k] = value;
      missing ||= !skipsMissing && Number.isNaN(value);
    }
    out[i] = missing ? Number.NaN : evaluate(...row);
  }
}

/**
 * Partial derivatives at each row by the arguments in `wanted`, filled into `partials`: known ones, else central differences,
 * relative 1e-9 for smooth functions of ordinary size.
 */
export function functionPartials(
  calls: FormulaFunction,
  given: readonly Float64Array[],
  wanted: readonly boolean[],
  partials: readonly Float64Array[],
  count: number,
): void {
  const row = new Array<number>(given.length).fill(0);
  for (let i = 0; i < count; i++) {
    for (let k = 0; k < given.length; k++) row[k] = (given[k] as Float64Array)[i] as number;
    const known = calls.partials?.(...row);
    for (let k = 0; k < given.length; k++) {
      if (!wanted[k]) continue;
      (partials[k] as Float64Array)[i] = known ? (known[k] as number) : centralDifference(calls.evaluate, row, k);
    }
  }
}

function centralDifference(evaluate: FormulaFunction["evaluate"], row: number[], k: number): number {
  const x = row[k] as number;
  const step = STEP * (Math.abs(x) || 1);
  row[k] = x + step;
  const above = evaluate(...row);
  row[k] = x - step;
  const below = evaluate(...row);
  row[k] = x;
  return (above - below) / (x + step - (x - step));
}

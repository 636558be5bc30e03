// Columns of double-double numbers: the two loops in which a factorization spends its time.
import type { DoubleDouble } from "./double-double.ts";
import { lostInProduct } from "./double-double.ts";

/** One number a place: hi[i] + lo[i]. */
export type DoubleDoubleColumn = { readonly hi: Float64Array; readonly lo: Float64Array };

/** Inner product of two columns from a place on, relative 1e-30 of the sum of sizes. */
export function innerProduct(a: DoubleDoubleColumn, b: DoubleDoubleColumn, from: number): DoubleDouble {
  let [hi, lo] = [0, 0];
  for (let i = from; i < a.hi.length; i++) {
    const [x, y] = [a.hi[i] as number, b.hi[i] as number];
    const product = x * y;
    const small = lostInProduct(x, y, product) + (x * (b.lo[i] as number) + (a.lo[i] as number) * y);
    const sum = hi + product;
    const part = sum - hi;
    const rest = lo + (hi - (sum - part) + (product - part)) + small;
    hi = sum + rest;
    lo = rest - (hi - sum);
  }
  return [hi, lo];
}

/** Adds factor times x to y from a place on; y is changed in place. */
export function addMultiple(y: DoubleDoubleColumn, [f, g]: DoubleDouble, x: DoubleDoubleColumn, from: number): void {
  for (let i = from; i < y.hi.length; i++) {
    const value = x.hi[i] as number;
    const product = f * value;
    const small = lostInProduct(f, value, product) + (f * (x.lo[i] as number) + g * value);
    const before = y.hi[i] as number;
    const sum = before + product;
    const part = sum - before;
    const rest = (y.lo[i] as number) + (before - (sum - part) + (product - part)) + small;
    const hi = sum + rest;
    y.hi[i] = hi;
    y.lo[i] = rest - (hi - sum);
  }
}

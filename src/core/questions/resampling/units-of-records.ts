import { SUMS } from "./resampled-statistic.ts";
import type { Units } from "./resampled-values.ts";

/**
 * Records as units to draw, one each, or all of one cluster together: sums of x and y less their means, and the values of x as they are.
 * x, y: of one length (y of zeros where there is none); codes: cluster of each record, null for every record by itself. Also the mean of x.
 */
export function unitsOfRecords(
  x: Float64Array,
  y: Float64Array,
  codes: Int32Array | null,
): { readonly units: Units; readonly centre: number } {
  const n = x.length;
  const meanOf = (values: Float64Array) => {
    const first = values[0] ?? 0;
    return first + values.reduce((sum, value) => sum + (value - first), 0) / n;
  };
  const [mx, my] = [meanOf(x), meanOf(y)];
  const count = codes ? codes.reduce((most, code) => Math.max(most, code + 1), 0) : n;
  const sums = new Float64Array(count * SUMS);
  const sizes = new Int32Array(count);
  for (let i = 0; i < n; i++) {
    const unit = codes ? (codes[i] as number) : i;
    const [dx, dy] = [(x[i] as number) - mx, (y[i] as number) - my];
    const parts = [1, dx, dy, dx * dx, dx * dy, dy * dy];
    for (let k = 0; k < SUMS; k++) sums[unit * SUMS + k] = (sums[unit * SUMS + k] as number) + (parts[k] as number);
    sizes[unit] = (sizes[unit] as number) + 1;
  }
  const ends = new Int32Array(count);
  for (let unit = 0; unit < count; unit++) ends[unit] = (ends[unit - 1] ?? 0) + (sizes[unit] as number);
  const values = new Float64Array(n);
  const next = ends.map((end, unit) => end - (sizes[unit] as number));
  for (let i = 0; i < n; i++) {
    const unit = codes ? (codes[i] as number) : i;
    const place = next[unit] as number;
    values[place] = x[i] as number;
    next[unit] = place + 1;
  }
  return { units: { count, sums, values, ends }, centre: mx };
}

import { mean, standardDeviation } from "../../numerics/index.ts";
import { linearFit } from "../fits/linear-fit.ts";

/** Do the records bend along x? Two-sided p of a squared term of x added to the design; 1 where it cannot be tested (x with two values, no freedom). */
export function bendCheck(columns: readonly Float64Array[], x: Float64Array, y: Float64Array): number {
  const [centre, spread] = [mean(x), standardDeviation(x)];
  const fit = linearFit([...columns, x.map((value) => ((value - centre) / spread) ** 2)], y);
  const p = fit.p[columns.length];
  return fit.rank === columns.length + 1 && p !== undefined && Number.isFinite(p) ? p : 1;
}

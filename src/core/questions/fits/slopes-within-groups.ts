import type { LinearFit } from "./linear-fit.ts";
import { linearFit, ones } from "./linear-fit.ts";

export type WithinSlopes = {
  readonly slopes: Float64Array;
  readonly standardErrors: Float64Array;
  readonly residualSumOfSquares: number;
  readonly fits: readonly (LinearFit | null)[];
};

/** A straight line for each group by itself. NaN (and no fit) for a group whose x does not vary; its squares about the mean still count. */
export function slopesWithinGroups(x: Float64Array, y: Float64Array, codes: Int32Array, groups: number): WithinSlopes {
  const fits = Array.from({ length: groups }, (_, group) => {
    const chosen = (values: Float64Array) => values.filter((_, i) => codes[i] === group);
    const own = chosen(y);
    const line = linearFit([ones(own.length), chosen(x)], own);
    return line.rank === 2
      ? { line, squares: line.residualSumOfSquares }
      : { line: null, squares: linearFit([ones(own.length)], own).residualSumOfSquares };
  });
  return {
    slopes: Float64Array.from(fits, ({ line }) => line?.coefficients[1] ?? Number.NaN),
    standardErrors: Float64Array.from(fits, ({ line }) => line?.standardErrors[1] ?? Number.NaN),
    residualSumOfSquares: fits.reduce((sum, { squares }) => sum + squares, 0),
    fits: fits.map(({ line }) => line),
  };
}

import { type Method, succeeded } from "../../base/index.ts";
import { compensatedSum, decimalsFromFirst, mean, sumOfSquares } from "../../numerics/index.ts";
import { knownNumber as known } from "../inputs/known-number.ts";
import { oneColumn } from "../inputs/one-column.ts";

/**
 * Lag-1 autocorrelation: products of neighbours about the mean, over the full sum of squares. x: at least two finite numbers in the order in which they
 * were read; NaN where all are the same. A record is subtracted first. Source: Box and Jenkins (1976), Time Series Analysis, eq. 2.1.11.
 */
export function lagOneAutocorrelation(x: Float64Array): number {
  const first = x[0] ?? Number.NaN;
  const shifted = x.map((value) => value - first);
  const middle = mean(shifted);
  const d = shifted.map((value) => value - middle);
  const products = d.subarray(1).map((value, i) => value * (d[i] as number));
  return compensatedSum(products) / compensatedSum(d.map((value) => value * value));
}

/** Mean, standard deviation and lag-1 autocorrelation to nearly all digits of the numbers as they were written, whatever their common offset. */
export const descriptiveNist: Method = {
  id: "descriptive-nist",
  name: "Mean, standard deviation and lag-1 autocorrelation",
  answers: "description",
  needs: { rows: 1 },
  inputs: { x: { kind: "quantities", meaning: "readings in the order in which they were taken" } },
  fields: {
    n: { meaning: "readings that count" },
    mean: { meaning: "arithmetic mean" },
    sd: { meaning: "standard deviation, n - 1 below; withheld for one reading" },
    lag1_autocorrelation: { meaning: "products of neighbours over the full sum of squares; withheld without spread" },
  },
  source: {
    citation:
      "Chan, Golub and LeVeque (1983), The American Statistician 37, 242-247; Box and Jenkins (1976), eq. 2.1.11",
    basis: "published",
  },
  run: (inputs) => {
    const column = oneColumn(inputs, "x", 1);
    if (!column.ok) return column;
    const { values } = column.value;
    const n = values.length;
    const readings = decimalsFromFirst(values);
    return succeeded({
      n,
      mean: (values[0] as number) + mean(readings),
      sd: n > 1 ? known(Math.sqrt(sumOfSquares(readings) / (n - 1))) : null,
      lag1_autocorrelation: n > 1 ? known(lagOneAutocorrelation(readings)) : null,
    });
  },
};

// A fit in numbers of 31 digits, of quantities as they are or of powers of one.
import {
  type DoubleDouble,
  type DoubleDoubleColumn,
  decimalValue,
  negative,
  preciseLeastSquares,
  productOf,
  sumOf,
} from "../../numerics/index.ts";

export type PreciseFit = {
  readonly coefficients: Float64Array;
  readonly standardErrors: Float64Array;
  readonly degreesOfFreedom: number;
  /** Residual standard deviation; 0 where only rounding of the data is left, NaN without degrees of freedom. */
  readonly sigma: number;
  /** Explained over total sum of squares, about the mean with a constant, else about zero. */
  readonly r2: number;
  readonly F: number;
};

/** Coefficients on the columns that were fitted to those that were asked for: a linear map. */
type Mapped = (coefficients: readonly DoubleDouble[]) => DoubleDouble[];
export type Design = { readonly columns: readonly DoubleDoubleColumn[]; readonly mapped: Mapped };

/** The power of two that brings the largest size in a column to about 1; 1 for zeros. */
function sizeOf(values: Float64Array): number {
  const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return largest > 0 ? 2 ** Math.max(-1000, Math.min(1000, Math.round(Math.log2(largest)))) : 1;
}

const times = ([hi, lo]: DoubleDouble, factor: number): DoubleDouble => [hi * factor, lo * factor];
const columnOf = (values: readonly DoubleDouble[]): DoubleDoubleColumn => ({
  hi: Float64Array.from(values, ([hi]) => hi),
  lo: Float64Array.from(values, ([, lo]) => lo),
});
/** Readings as the decimals that were written, over a power of two. */
const scaledColumn = (values: Float64Array, size: number): DoubleDoubleColumn =>
  columnOf(Array.from(values, (value) => times(decimalValue(value), 1 / size)));

/** Columns as they are, brought to a size of about 1 by powers of two, which rounds nothing. */
export function designOf(columns: readonly Float64Array[]): Design {
  const sizes = columns.map(sizeOf);
  return {
    columns: columns.map((column, j) => scaledColumn(column, sizes[j] ?? 1)),
    mapped: (found) => found.map((value, j) => times(value, 1 / (sizes[j] ?? 1))),
  };
}

/**
 * Powers of t = (x - centre) / half, and the way back to powers of x: a polynomial in x - centre is one in x after Horner's shifts.
 * With a constant the centre is the middle of x, so that the powers differ as much as they can; without, it must be 0.
 */
export function powersOf(x: Float64Array, degree: number, constant: boolean): Design {
  const [low, high] = [x.reduce((a, b) => Math.min(a, b)), x.reduce((a, b) => Math.max(a, b))];
  const centre = constant ? low / 2 + high / 2 : 0;
  const half = sizeOf(x.map((value) => value - centre));
  const t = Array.from(x, (value) => times(sumOf(decimalValue(value), [-centre, 0]), 1 / half));
  let power = t.map((): DoubleDouble => [1, 0]);
  const columns: DoubleDoubleColumn[] = [];
  for (let k = 0; k <= degree; k++) {
    if (k > 0) power = power.map((value, i) => productOf(value, t[i] ?? [0, 0]));
    if (k > 0 || constant) columns.push(columnOf(power));
  }
  const first = constant ? 0 : 1;
  const mapped: Mapped = (found) => {
    const out = found.map((value, k) => times(value, half ** -(k + first)));
    for (let done = 0; centre !== 0 && done < degree; done++)
      for (let k = degree - 1; k >= done; k--)
        out[k] = sumOf(out[k] ?? [0, 0], negative(productOf([centre, 0], out[k + 1] ?? [0, 0])));
    return out;
  };
  return { columns, mapped };
}

/** Scatter below this share of y is what rounding of the records leaves of an exact fit. */
const ROUNDING = 1e-26;

/** Least squares of y on a design of full rank; constant: whether its first column is one. */
export function preciseFit({ columns, mapped }: Design, y: Float64Array, constant: boolean): PreciseFit {
  const size = sizeOf(y);
  const [n, p] = [y.length, columns.length];
  const fit = preciseLeastSquares(columns, scaledColumn(y, size));
  const roots = columns.map((_, j) => mapped(fit.inverseRoot.map((row) => row[j] ?? [0, 0])));
  const first = constant ? 1 : 0;
  const explained = fit.explained.slice(first).reduce((sum, value) => sumOf(sum, value), [0, 0] as DoubleDouble);
  const whole = sumOf(explained, fit.residualSumOfSquares)[0];
  const all = whole + (constant ? (fit.explained[0]?.[0] ?? 0) : 0);
  const scatter = fit.residualSumOfSquares[0] > ROUNDING * all ? fit.residualSumOfSquares[0] : 0;
  const degreesOfFreedom = n - p;
  const sigma = degreesOfFreedom > 0 ? Math.sqrt(scatter / degreesOfFreedom) * size : Number.NaN;
  return {
    coefficients: Float64Array.from(mapped(fit.coefficients), ([value]) => value * size),
    standardErrors: Float64Array.from(
      { length: p },
      (_, i) => sigma * Math.hypot(...roots.map((root) => root[i]?.[0] ?? 0)),
    ),
    degreesOfFreedom,
    sigma,
    r2: whole > ROUNDING * all ? explained[0] / whole : Number.NaN,
    F: scatter > 0 && p > first ? (explained[0] / (p - first)) * (degreesOfFreedom / scatter) : Number.NaN,
  };
}

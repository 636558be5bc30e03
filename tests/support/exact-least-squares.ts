// Least squares by whole numbers of any length: nothing is rounded until the answer is written as a double.

type Ratio = readonly [top: bigint, bottom: bigint];

/** The decimal that a number is written as, as a ratio. */
export function ratioOf(value: number): Ratio {
  const [digits = "", power = "0"] = value.toExponential().split("e");
  const [whole = "", fraction = ""] = digits.split(".");
  const exponent = Number(power) - fraction.length;
  const scaled = BigInt(whole + fraction);
  return exponent < 0 ? [scaled, 10n ** BigInt(-exponent)] : [scaled * 10n ** BigInt(exponent), 1n];
}

const less = (a: Ratio, b: Ratio): Ratio => [a[0] * b[1] - b[0] * a[1], a[1] * b[1]];
export const plus = (a: Ratio, b: Ratio): Ratio => [a[0] * b[1] + b[0] * a[1], a[1] * b[1]];
export const product = (a: Ratio, b: Ratio): Ratio => [a[0] * b[0], a[1] * b[1]];
const over = (a: Ratio, b: Ratio): Ratio => [a[0] * b[1], a[1] * b[0]];

function shortened([top, bottom]: Ratio): Ratio {
  let [a, b] = [top < 0n ? -top : top, bottom < 0n ? -bottom : bottom];
  while (b > 0n) [a, b] = [b, a % b];
  return a === 0n ? [0n, 1n] : [top / a, bottom / a];
}

/** A ratio as a double, right to 17 digits. */
export function numberOf([top, bottom]: Ratio): number {
  const sign = top < 0n === bottom < 0n ? 1 : -1;
  const [a, b] = [top < 0n ? -top : top, bottom < 0n ? -bottom : bottom];
  if (a === 0n) return 0;
  const shift = 40 - (a.toString().length - b.toString().length);
  const scaled = shift > 0 ? (a * 10n ** BigInt(shift)) / b : a / (b * 10n ** BigInt(-shift));
  return sign * Number(`${scaled}e${-shift}`);
}

/** Coefficients, residual sum of squares, and diagonal of (X'X)^-1; X by rows of ratios, of full rank. */
export function exactLeastSquares(
  X: readonly (readonly Ratio[])[],
  y: readonly Ratio[],
): { coefficients: Ratio[]; residualSumOfSquares: Ratio; diagonal: Ratio[] } {
  const p = X[0]?.length ?? 0;
  const sum = (terms: readonly Ratio[]): Ratio => shortened(terms.reduce(plus, [0n, 1n]));
  // The normal equations, with the unit matrix beside them: Gauss and Jordan.
  const rows = Array.from({ length: p }, (_, a) => [
    ...Array.from({ length: p }, (_unused, b) => sum(X.map((row) => product(row[a]!, row[b]!)))),
    sum(X.map((row, i) => product(row[a]!, y[i]!))),
    ...Array.from({ length: p }, (_unused, b): Ratio => [a === b ? 1n : 0n, 1n]),
  ]);
  for (let a = 0; a < p; a++) {
    const pivot = rows[a]![a]!;
    rows[a] = rows[a]!.map((value) => shortened(over(value, pivot)));
    for (let b = 0; b < p; b++)
      if (b !== a) {
        const factor = rows[b]![a]!;
        rows[b] = rows[b]!.map((value, k) => shortened(less(value, product(factor, rows[a]![k]!))));
      }
  }
  const coefficients = rows.map((row) => row[p]!);
  const residuals = X.map((row, i) => less(y[i]!, sum(row.map((value, a) => product(value, coefficients[a]!)))));
  return {
    coefficients,
    residualSumOfSquares: sum(residuals.map((value) => product(value, value))),
    diagonal: rows.map((row, a) => row[p + 1 + a]!),
  };
}

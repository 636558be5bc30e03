import type { Contribution } from "../columns/index.ts";

/**
 * Standard uncertainty at each row: the root of the sum of squares of what each source adds; NaN where the value is missing or the derivative has no
 * size there; null if there is no source. Sources are measured columns, so one that enters a formula several times has already been added up with its sign.
 * Source: JCGM 100:2008 (GUM), 5.1.2, equation 10, with each source independent of the others.
 */
export function combinedUncertainty(
  values: Float64Array,
  errors: ReadonlyMap<string, Contribution>,
): Float64Array | null {
  if (errors.size === 0) return null;
  const squares = new Float64Array(values.length);
  for (const { values: parts } of errors.values())
    for (let i = 0; i < squares.length; i++) squares[i] = (squares[i] as number) + (parts[i] as number) ** 2;
  return squares.map((square, i) =>
    Number.isNaN(values[i]) || !Number.isFinite(square) ? Number.NaN : Math.sqrt(square),
  );
}

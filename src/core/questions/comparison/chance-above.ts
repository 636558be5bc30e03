import { bracketedRoot, midranks, normalQuantile } from "../../numerics/index.ts";

/** The chance that a record of the second group is graded above one of the first (ties count half), with its interval at 1 - level. */
export type ChanceAbove = { readonly value: number; readonly low: number; readonly high: number };

/**
 * U / (m n) with the interval of those chances c whose distance to it is at most z sqrt(V(c)),
 * V(c) = c (1 - c) (1 + k (1 - c) / (2 - c) + k c / (1 + c)) / (m n), k = (m + n) / 2 - 1. Complete separation still has an interval.
 * first, second: at least one record each. level in (0, 1). Source: R. G. Newcombe (2006), Statistics in Medicine 25, 559-573, method 5.
 */
export function chanceAbove(first: Float64Array, second: Float64Array, level: number): ChanceAbove {
  const [m, n] = [first.length, second.length];
  const ranks = midranks(Float64Array.from([...first, ...second]));
  const value = (ranks.slice(m).reduce((sum, rank) => sum + rank, 0) - (n * (n + 1)) / 2) / (m * n);
  const z = normalQuantile(1 - level / 2);
  const k = (m + n) / 2 - 1;
  const off = (c: number) =>
    (c - value) ** 2 - ((z * z * c * (1 - c)) / (m * n)) * (1 + (k * (1 - c)) / (2 - c) + (k * c) / (1 + c));
  const inside = Math.min(1 - 1e-9, Math.max(1e-9, value));
  return {
    value,
    low: value <= 0 ? 0 : bracketedRoot(off, 0, inside),
    high: value >= 1 ? 1 : bracketedRoot(off, inside, 1),
  };
}

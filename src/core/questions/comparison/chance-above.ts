import { midranks, tQuantile, variance } from "../../numerics/index.ts";

/** The chance that a record of the second group is graded above one of the first (ties count half), with its interval at 1 - level. NaN when neither group overlaps with spread. */
export type ChanceAbove = { readonly value: number; readonly low: number; readonly high: number; readonly standardError: number; readonly degreesOfFreedom: number };

/** Source: E. Brunner, U. Munzel (2000), Biometrical Journal 42, 17-25. At least two records in each. */
export function chanceAbove(first: Float64Array, second: Float64Array, level: number): ChanceAbove {
  const [m, n] = [first.length, second.length];
  const all = midranks(Float64Array.from([...first, ...second]));
  const placed = (own: Float64Array, offset: number) => {
    const inside = midranks(own);
    return own.map((_, i) => (all[offset + i] as number) - (inside[i] as number));
  };
  const [a, b] = [placed(first, 0), placed(second, m)];
  const value = b.reduce((sum, one) => sum + one, 0) / (n * m);
  const [va, vb] = [variance(a) / (n * n) / m, variance(b) / (m * m) / n];
  const standardError = Math.sqrt(va + vb);
  const degreesOfFreedom = (va + vb) ** 2 / (va ** 2 / (m - 1) + vb ** 2 / (n - 1));
  const half = standardError * tQuantile(1 - level / 2, degreesOfFreedom);
  return { value, low: Math.max(0, value - half), high: Math.min(1, value + half), standardError, degreesOfFreedom };
}

import { power as powerOf } from "../../base/index.ts";

export type KappaEstimate = { readonly value: number; readonly standardError: number };

/**
 * Weighted kappa of two graders: (observed - chance) / (1 - chance) with weights 1 - (distance / (levels - 1))^power; power 0 plain (1 for the same
 * grade, else 0), 1 linear, 2 quadratic.
 * a, b: grades 0 … levels - 1 of the same pieces. NaN when chance agreement is already complete. Large-sample standard error.
 * Source: J. L. Fleiss, J. Cohen, B. S. Everitt (1969), Psychological Bulletin 72, 323-327.
 */
export function weightedKappa(
  a: ArrayLike<number>,
  b: ArrayLike<number>,
  levels: number,
  power: 0 | 1 | 2,
): KappaEstimate {
  const n = a.length;
  const counts = Array.from({ length: levels }, () => new Float64Array(levels));
  for (let i = 0; i < n; i++) {
    const row = counts[a[i] as number] as Float64Array;
    row[b[i] as number] = (row[b[i] as number] as number) + 1;
  }
  const share = counts.map((row) => row.map((count) => count / n));
  const weight = (i: number, j: number) =>
    i === j ? 1 : power === 0 ? 0 : 1 - powerOf(Math.abs(i - j) / (levels - 1), power);
  const rows = counts.map((row) => row.reduce((sum, count) => sum + count, 0) / n);
  const columns = rows.map((_, j) => counts.reduce((sum, row) => sum + (row[j] as number), 0) / n);
  let observed = 0;
  let chance = 0;
  const [rowWeight, columnWeight] = [new Float64Array(levels), new Float64Array(levels)];
  for (let i = 0; i < levels; i++)
    for (let j = 0; j < levels; j++) {
      const w = weight(i, j);
      observed += w * ((share[i] as Float64Array)[j] as number);
      chance += w * (rows[i] as number) * (columns[j] as number);
      rowWeight[i] = (rowWeight[i] as number) + w * (columns[j] as number);
      columnWeight[j] = (columnWeight[j] as number) + w * (rows[i] as number);
    }
  const value = (observed - chance) / (1 - chance);
  let sum = 0;
  for (let i = 0; i < levels; i++)
    for (let j = 0; j < levels; j++)
      sum +=
        ((share[i] as Float64Array)[j] as number) *
        (weight(i, j) - ((rowWeight[i] as number) + (columnWeight[j] as number)) * (1 - value)) ** 2;
  return { value, standardError: Math.sqrt(Math.max(0, sum - (value - chance * (1 - value)) ** 2) / n) / (1 - chance) };
}

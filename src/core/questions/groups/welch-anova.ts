import { fUpperTail } from "../../numerics/index.ts";
import type { GroupMoments } from "./group-moments.ts";

/** Welch's F for equal means of groups with spreads of their own. NaN where a group has no spread. Source: Welch (1951), eqs. 22 and 25. */
export function welchAnova(groups: GroupMoments): { F: number; df1: number; df2: number; p: number } {
  const k = groups.counts.length;
  const weights = groups.counts.map((count, g) => count / (groups.variances[g] as number));
  const total = weights.reduce((sum, w) => sum + w, 0);
  const centre = weights.reduce((sum, w, g) => sum + w * (groups.means[g] as number), 0) / total;
  const between = weights.reduce((sum, w, g) => sum + w * ((groups.means[g] as number) - centre) ** 2, 0) / (k - 1);
  const lambda = weights.reduce((sum, w, g) => sum + (1 - w / total) ** 2 / ((groups.counts[g] as number) - 1), 0);
  const F = between / (1 + (2 * (k - 2) * lambda) / (k * k - 1));
  const df2 = (k * k - 1) / (3 * lambda);
  return { F, df1: k - 1, df2, p: Number.isFinite(F) && Number.isFinite(df2) ? fUpperTail(F, k - 1, df2) : Number.NaN };
}

/** The usual one-way F with one common spread: between over within. */
export function oneWayAnova(groups: GroupMoments): {
  F: number;
  df1: number;
  df2: number;
  between: number;
  within: number;
  p: number;
} {
  const n = groups.counts.reduce((sum, count) => sum + count, 0);
  const centre = groups.counts.reduce((sum, count, g) => sum + count * (groups.means[g] as number), 0) / n;
  const between = groups.counts.reduce((sum, count, g) => sum + count * ((groups.means[g] as number) - centre) ** 2, 0);
  const within = groups.counts.reduce(
    (sum, count, g) => sum + (count > 1 ? (count - 1) * (groups.variances[g] as number) : 0),
    0,
  );
  const [df1, df2] = [groups.counts.length - 1, n - groups.counts.length];
  const F = between / df1 / (within / df2);
  return { F, df1, df2, between, within, p: Number.isFinite(F) ? fUpperTail(F, df1, df2) : Number.NaN };
}

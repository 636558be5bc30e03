import { bracketedMinimum, bracketedRoot } from "../../numerics/index.ts";
import { atRatio } from "./at-ratio.ts";
import type { GroupedSums } from "./grouped-sums.ts";
import { slopesAtRatio } from "./slopes-at-ratio.ts";

export type VarianceComponents = {
  readonly between: number;
  readonly within: number;
  readonly converged: boolean;
  /** No scatter within groups is left: the ratio runs off to infinity. */
  readonly unbounded: boolean;
};

/**
 * The variances between and within groups that make the restricted likelihood largest. data: sums of the records by group. The ratio r of the two
 * is sought as r/(1+r), from 0 to 1: first the lowest of 41 places, then the root of the exact slope beside it; zero is allowed.
 * Edges: `unbounded` where the likelihood still rises at the upper end, or the residual vanishes. Source: Laird and Ware (1982), Biometrics 38, 963-974.
 */
export function varianceComponents(data: GroupedSums): VarianceComponents {
  const free = data.rows - data.scales.length + 1;
  const profile = (share: number) => {
    const { logDeterminant, residual } = atRatio(data, share / (1 - share));
    return logDeterminant + free * Math.log(residual);
  };
  const slope = (share: number) => {
    const ratio = share / (1 - share);
    const at = atRatio(data, ratio);
    const { determinant, residual } = slopesAtRatio(data, ratio, at);
    return determinant + (free * residual) / at.residual;
  };
  const grid = Float64Array.from({ length: 41 }, (_, i) => (i / 40) ** 2 * (1 - 1e-9));
  const values = grid.map(profile);
  const place = values.reduce((least, value, i) => (value < (values[least] as number) ? i : least), 0);
  const [low, high] = [grid[Math.max(place - 1, 0)] as number, grid[Math.min(place + 1, 40)] as number];
  const ended = (ratio: number, converged: boolean, unbounded = false) => {
    const within = atRatio(data, ratio).residual / free;
    return { between: ratio * within, within, converged, unbounded };
  };
  if (!(slope(high) > 0) && high === grid[40]) return ended(high / (1 - high), true, true);
  if (slope(low) < 0 && slope(high) > 0) {
    const share = bracketedRoot(slope, low, high);
    return ended(share / (1 - share), true);
  }
  const found = bracketedMinimum(profile, low, high);
  const isZero = place === 0 && slope(0) >= 0 && profile(0) <= found.value + 1e-9;
  return ended(isZero ? 0 : found.at / (1 - found.at), found.converged);
}

// Variances within and between groups by restricted maximum likelihood, and the degrees of freedom that their uncertainty leaves.
import { bracketedMinimum, bracketedRoot } from "../../numerics/index.ts";
import { atRatio, coefficientsAt, type Grouped, slopesAtRatio } from "./random-intercept.ts";

/** Minus twice the restricted log likelihood at a variance between and one within groups. */
export function restrictedDeviance(data: Grouped, between: number, within: number): number {
  const { logDeterminant, residual } = atRatio(data, between / within);
  const free = data.rows - data.scales.length + 1;
  return free * Math.log(2 * Math.PI * within) + logDeterminant + residual / within;
}

export type Components = { readonly between: number; readonly within: number; readonly converged: boolean };

/** The variances that make the restricted likelihood largest. The ratio is sought as r/(1-r), r from 0 to 1; zero is allowed. */
export function varianceComponents(data: Grouped): Components {
  const free = data.rows - data.scales.length + 1;
  const profile = (share: number) => {
    const { logDeterminant, residual } = atRatio(data, share / (1 - share));
    return logDeterminant + free * Math.log(residual);
  };
  const grid = Array.from({ length: 41 }, (_, i) => (i / 40) ** 2 * (1 - 1e-9));
  const best = grid.reduce((least, share) => (profile(share) < profile(least) ? share : least), 0);
  const place = grid.indexOf(best);
  const [low, high] = [grid[Math.max(place - 1, 0)] ?? 0, grid[Math.min(place + 1, 40)] ?? 1];
  const slope = (share: number) => {
    const { determinant, residual } = slopesAtRatio(data, share / (1 - share));
    return determinant + (free * residual) / atRatio(data, share / (1 - share)).residual;
  };
  const found = bracketedMinimum(profile, low, high);
  const isZero = place === 0 && slope(0) >= 0 && profile(0) <= found.value + 1e-9;
  const share = slope(low) < 0 && slope(high) > 0 ? bracketedRoot(slope, low, high) : found.at;
  const ratio = isZero ? 0 : share / (1 - share);
  const within = atRatio(data, ratio).residual / free;
  return { between: ratio * within, within, converged: found.converged };
}

/** Second derivatives of the restricted deviance by the variance between (a) and within (s): differences of exact first derivatives. */
function curvature(data: Grouped, { between, within: s }: Components): { aa: number; as: number; ss: number } {
  const r = between / s;
  const step = 1e-4 * r;
  const [up, down, at] = [slopesAtRatio(data, r + step), slopesAtRatio(data, r - step), slopesAtRatio(data, r)];
  const bend = (up.determinant - down.determinant + (up.residual - down.residual) / s) / (2 * step);
  const slope = at.determinant + at.residual / s;
  const free = data.rows - data.scales.length + 1;
  return {
    aa: bend / s ** 2,
    as: -(slope + r * bend + at.residual / s) / s ** 2,
    ss: (-free + 2 * r * slope + r * r * bend + (2 * (atRatio(data, r).residual + r * at.residual)) / s) / s ** 2,
  };
}

/** Satterthwaite's degrees of freedom of each coefficient: 2 v^2 / (g' C g), C twice the inverse of the deviance's second derivatives. */
export function satterthwaite(data: Grouped, found: Components): number[] {
  const { between, within } = found;
  const [h, k] = [1e-4 * between, 1e-4 * within];
  const { aa: faa, as: fas, ss: fss } = curvature(data, found);
  const determinant = faa * fss - fas ** 2;
  const variance = (a: number, s: number) => coefficientsAt(data, atRatio(data, a / s)).spread.map((v) => v * s);
  const [up, down] = [variance(between + h, within), variance(between - h, within)];
  const [right, left] = [variance(between, within + k), variance(between, within - k)];
  return variance(between, within).map((v, j) => {
    const a = ((up[j] as number) - (down[j] as number)) / (2 * h);
    const s = ((right[j] as number) - (left[j] as number)) / (2 * k);
    return (2 * v * v * determinant) / (2 * (a * a * fss - 2 * a * s * fas + s * s * faa));
  });
}

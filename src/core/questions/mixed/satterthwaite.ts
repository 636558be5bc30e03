import { atRatio } from "./at-ratio.ts";
import { coefficientsAt } from "./coefficients-at.ts";
import type { GroupedSums } from "./grouped-sums.ts";
import { slopesAtRatio } from "./slopes-at-ratio.ts";
import type { VarianceComponents } from "./variance-components.ts";

/** Second derivatives of the restricted deviance by the variance between (a) and within (s): differences of exact first derivatives. */
function curvature(
  data: GroupedSums,
  { between, within: s }: VarianceComponents,
): { aa: number; as: number; ss: number } {
  const r = between / s;
  const step = 1e-4 * r;
  const slopes = (ratio: number) => slopesAtRatio(data, ratio, atRatio(data, ratio));
  const [up, down, at] = [slopes(r + step), slopes(r - step), slopes(r)];
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
export function satterthwaite(data: GroupedSums, found: VarianceComponents): number[] {
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

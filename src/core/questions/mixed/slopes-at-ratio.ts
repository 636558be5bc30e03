import type { AtRatio } from "./at-ratio.ts";
import type { GroupedSums } from "./grouped-sums.ts";

/** Exact derivatives by the ratio of variances, at the place where `at` was factored: of the log determinant, and of the residual sum of squares. */
export function slopesAtRatio(
  { sizes, means, scales }: GroupedSums,
  ratio: number,
  { factor: L, residual }: AtRatio,
): { determinant: number; residual: number } {
  const k = scales.length;
  const z = new Float64Array(k);
  let determinant = 0;
  let share = 0;
  for (let g = 0; g < sizes.length; g++) {
    const weight = (sizes[g] as number) / (1 + (sizes[g] as number) * ratio);
    let spread = 0;
    for (let i = 0; i < k; i++) {
      let rest = means[g * k + i] as number;
      for (let m = 0; m < i; m++) rest -= (L[i * k + m] as number) * (z[m] as number);
      z[i] = rest / (L[i * k + i] as number);
      spread += (z[i] as number) ** 2;
    }
    const last = (z[k - 1] as number) ** 2;
    determinant += weight - weight * weight * (spread - last);
    share -= weight * weight * last;
  }
  return { determinant, residual: share * residual };
}

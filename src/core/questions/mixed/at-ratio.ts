import type { GroupedSums } from "./grouped-sums.ts";

export type AtRatio = {
  /** Lower Cholesky factor of the weighted sums of squares of [constant, x ..., y]. */
  readonly factor: Float64Array;
  readonly logDeterminant: number;
  readonly residual: number;
};

/** The weighted least-squares problem where the variance between groups is `ratio` times the one within. */
export function atRatio({ sizes, within, means, scales }: GroupedSums, ratio: number): AtRatio {
  const k = scales.length;
  const L = Float64Array.from(within);
  let logDeterminant = 0;
  for (let g = 0; g < sizes.length; g++) {
    const inflation = 1 + (sizes[g] as number) * ratio;
    const weight = (sizes[g] as number) / inflation;
    logDeterminant += Math.log(inflation);
    for (let a = 0; a < k; a++)
      for (let b = 0; b <= a; b++)
        L[a * k + b] = (L[a * k + b] as number) + weight * (means[g * k + a] as number) * (means[g * k + b] as number);
  }
  for (let j = 0; j < k; j++)
    for (let i = j; i < k; i++) {
      let rest = L[i * k + j] as number;
      for (let m = 0; m < j; m++) rest -= (L[i * k + m] as number) * (L[j * k + m] as number);
      L[i * k + j] = i === j ? Math.sqrt(Math.max(rest, 0)) : rest / (L[j * k + j] as number);
    }
  for (let j = 0; j < k - 1; j++) logDeterminant += 2 * Math.log((L[j * k + j] as number) * (scales[j] as number));
  return { factor: L, logDeterminant, residual: ((L[k * k - 1] as number) * (scales[k - 1] as number)) ** 2 };
}

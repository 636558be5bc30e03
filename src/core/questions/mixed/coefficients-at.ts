import type { AtRatio } from "./at-ratio.ts";
import type { GroupedSums } from "./grouped-sums.ts";

/** Coefficients (constant first), and the inverse of X'V^-1 X times the variance within, of which the diagonal is given. */
export function coefficientsAt(
  { centres, scales }: GroupedSums,
  { factor: L }: AtRatio,
): { coef: number[]; spread: number[] } {
  const k = scales.length;
  const p = k - 1;
  const at = (i: number, j: number) => L[i * k + j] as number;
  const scaled = new Float64Array(p);
  for (let j = p - 1; j >= 0; j--) {
    let rest = at(p, j);
    for (let m = j + 1; m < p; m++) rest -= at(m, j) * (scaled[m] as number);
    scaled[j] = rest / at(j, j);
  }
  const y = scales[p] as number;
  const contrast = (j: number) =>
    Array.from({ length: p }, (_, m) =>
      j === 0
        ? m === 0
          ? 1
          : -(centres[m] as number) / (scales[m] as number)
        : m === j
          ? 1 / (scales[m] as number)
          : 0,
    );
  const contrasts = Array.from({ length: p }, (_, j) => contrast(j));
  const spread = contrasts.map((l) => {
    const z: number[] = [];
    for (let i = 0; i < p; i++) z.push(((l[i] as number) - z.reduce((s, v, m) => s + at(i, m) * v, 0)) / at(i, i));
    return z.reduce((s, v) => s + v * v, 0);
  });
  const coef = contrasts.map(
    (l, j) => y * l.reduce((s, v, m) => s + v * (scaled[m] as number), 0) + (j === 0 ? (centres[p] as number) : 0),
  );
  return { coef, spread };
}

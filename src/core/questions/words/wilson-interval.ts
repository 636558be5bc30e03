import { normalQuantile } from "../../numerics/index.ts";

/** Wilson's score interval at 95 % for k of n: (p + z^2/2n -/+ z sqrt(p q / n + z^2/4n^2)) / (1 + z^2/n). 0 <= k <= n, n >= 1. Source: Wilson (1927), JASA 22, 209-212. */
export function wilsonInterval(k: number, n: number): { readonly low: number; readonly high: number } {
  const z = normalQuantile(0.975);
  const share = k / n;
  const centre = share + (z * z) / (2 * n);
  const half = z * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  const scale = 1 + (z * z) / n;
  return { low: k === 0 ? 0 : (centre - half) / scale, high: k === n ? 1 : (centre + half) / scale };
}

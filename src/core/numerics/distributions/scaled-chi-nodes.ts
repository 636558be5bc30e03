import { poissonDensity } from "./poisson-density.ts";

/**
 * Places s and weights w such that the mean of g(S) is sum w g(s), S = sqrt(chi-square / df): the trapezoidal rule in log s, which
 * converges exponentially for smooth g. degreesOfFreedom > 0; Infinity gives the one place 1. About 1e-12 relative for positive g.
 * Source: L. N. Trefethen, J. A. C. Weideman (2014), SIAM Review 56, 385-458, section 5 on the real line.
 */
export function scaledChiNodes(degreesOfFreedom: number): { readonly s: Float64Array; readonly w: Float64Array } {
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return { s: Float64Array.of(1), w: Float64Array.of(1) };
  const df = degreesOfFreedom;
  const width = 1 / Math.sqrt(2 * df);
  const step = Math.min(0.06, width / 4);
  const low = -Math.max(20 * width, 90 / df);
  const high = 9 * width + 1.5 / Math.max(1, df / 4);
  const count = Math.ceil((high - low) / step) + 1;
  const s = new Float64Array(count);
  const w = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const u = low + i * step;
    s[i] = Math.exp(u);
    w[i] = step * df * poissonDensity(df / 2, (df * Math.exp(2 * u)) / 2);
  }
  return { s, w };
}

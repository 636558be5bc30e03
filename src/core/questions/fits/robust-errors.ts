import type { LinearFit } from "./linear-fit.ts";

export type RobustKind = "hc0" | "hc1" | "hc2" | "hc3";

/**
 * Standard errors that do not lean on an equal scatter: A (sum g_i e_i^2 x_i x_i') A, A the inverse of X'X; g is 1, n/(n-p), 1/(1-h) or
 * 1/(1-h)^2 for HC0 to HC3. One entry a coefficient. A record with leverage 1 counts nothing. Source: MacKinnon and White (1985).
 */
export function robustErrors(fit: LinearFit, kind: RobustKind): Float64Array {
  const n = fit.residuals.length;
  const p = fit.X.length;
  const variance = new Float64Array(p);
  for (let i = 0; i < n; i++) {
    const free = 1 - (fit.leverage[i] as number);
    if (free < 1e-10) continue;
    const growth = kind === "hc0" ? 1 : kind === "hc1" ? n / (n - p) : kind === "hc2" ? 1 / free : 1 / (free * free);
    const square = growth * (fit.residuals[i] as number) ** 2;
    for (let j = 0; j < p; j++) {
      let pull = 0;
      for (let k = 0; k < p; k++)
        pull += ((fit.inverse[j] as Float64Array)[k] as number) * ((fit.X[k] as Float64Array)[i] as number);
      variance[j] = (variance[j] as number) + square * pull * pull;
    }
  }
  return variance.map(Math.sqrt);
}

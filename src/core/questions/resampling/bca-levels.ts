import { normalLowerTail, normalQuantile } from "../../numerics/index.ts";

export type BcaLevels = { readonly low: number; readonly high: number };

/**
 * Levels at which the law of resamples is read, corrected for bias and for a spread that changes with the figure (BCa):
 * P(Z < z0 + (z0 + z) / (1 - acceleration (z0 + z))) at the quantiles z of (1 - level) / 2 and (1 + level) / 2.
 * z0, acceleration: finite. NaN for a limit that has none: the denominator is not above zero.
 * Source: B. Efron (1987), JASA 82, 171-185; B. Efron, R. Tibshirani (1993), An Introduction to the Bootstrap, eq. 14.10.
 * @example bcaLevels(0, 0, 0.95) // 0.025 and 0.975
 */
export function bcaLevels(z0: number, acceleration: number, level: number): BcaLevels {
  const half = normalQuantile((1 - level) / 2);
  const corrected = (quantile: number) => {
    const z = z0 + quantile;
    const rest = 1 - acceleration * z;
    return rest > 0 ? normalLowerTail(z0 + z / rest) : Number.NaN;
  };
  return { low: corrected(half), high: corrected(-half) };
}

/**
 * The acceleration: sum u^3 / (6 (sum u^2)^1.5). u: (n - 1) / n times the mean less each figure with one unit left out, both of the unit's own stratum of n.
 * For one stratum the factor falls out. leftOut: NaN where there is no figure, and left aside; starts: first unit of each stratum, and the number of
 * units at the end; tie: figures of a stratum that differ by no more are the same but for rounding. Zero where nothing changes the figure.
 * Source: B. Efron, R. Tibshirani (1993), An Introduction to the Bootstrap, eq. 14.15; A. C. Davison, D. V. Hinkley (1997), Bootstrap Methods, section 3.2.
 */
export function accelerationOf(leftOut: Float64Array, starts: Int32Array, tie = 0): number {
  let [squares, cubes] = [0, 0];
  for (let stratum = 1; stratum < starts.length; stratum++) {
    const own = leftOut.subarray(starts[stratum - 1], starts[stratum]).filter(Number.isFinite);
    const first = own[0] ?? 0;
    if (own.every((figure) => Math.abs(figure - first) <= tie)) continue;
    const mean = own.reduce((sum, figure) => sum + (figure - first) / own.length, 0);
    for (const figure of own) {
      const u = ((own.length - 1) / own.length) * (mean - (figure - first));
      squares += u * u;
      cubes += u * u * u;
    }
  }
  return squares > 0 ? cubes / (6 * squares ** 1.5) : 0;
}

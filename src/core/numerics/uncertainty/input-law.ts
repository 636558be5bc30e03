/**
 * What is known of an input, as a law about its estimate. rectangular, triangular, u-shaped: symmetric between mean - halfWidth and mean + halfWidth;
 * t: mean + scale times Student's t (scale is s / sqrt n of n readings).
 * Source: JCGM 101:2008, 6.4 and table 1.
 */
export type InputLaw =
  | { readonly law: "normal"; readonly mean: number; readonly sd: number }
  | { readonly law: "rectangular" | "triangular" | "u-shaped"; readonly mean: number; readonly halfWidth: number }
  | { readonly law: "t"; readonly mean: number; readonly scale: number; readonly degreesOfFreedom: number };

/** Half width over standard deviation: rectangular sqrt 3, triangular sqrt 6, U-shaped (arcsine) sqrt 2. */
export const HALF_WIDTHS = { rectangular: Math.sqrt(3), triangular: Math.sqrt(6), "u-shaped": Math.SQRT2 } as const;

/** Standard deviation of a law; Infinity for t with two degrees of freedom or fewer. */
export function lawStandardUncertainty(law: InputLaw): number {
  if (law.law === "normal") return law.sd;
  if (law.law !== "t") return law.halfWidth / HALF_WIDTHS[law.law];
  const df = law.degreesOfFreedom;
  return df > 2 ? law.scale * Math.sqrt(df / (df - 2)) : Number.POSITIVE_INFINITY;
}

import { coverageFactor } from "../../numerics/index.ts";

export type Coverage = { readonly level: number; readonly isTruncated: boolean };

/** k and U at 95 %, 99 % and the level asked for; infinite degrees of freedom are withheld and k is the normal law's. */
export function coverageFields(standard: number, degreesOfFreedom: number, { level, isTruncated }: Coverage) {
  const used =
    isTruncated && Number.isFinite(degreesOfFreedom)
      ? Math.max(1, Math.floor(degreesOfFreedom + 1e-9))
      : degreesOfFreedom;
  const [k95, k99, k] = [0.95, 0.99, level].map((one) => coverageFactor(one, used)) as [number, number, number];
  return {
    df_eff: degreesOfFreedom,
    df_used: used,
    k95,
    k99,
    k,
    U95: k95 * standard,
    U99: k99 * standard,
    U: k * standard,
  };
}

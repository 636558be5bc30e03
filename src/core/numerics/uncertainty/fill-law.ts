import type { InputLaw } from "./input-law.ts";
import { quickNormalQuantile } from "./quick-normal-quantile.ts";

/**
 * Draws of a law from uniform numbers, in place: `uniform` in (0, 1) becomes the law's values. second: further uniform numbers, only read by t.
 * Normal, rectangular, triangular and U-shaped: the inverse of the distribution function. t: Bailey's polar form, sqrt(df (u^(-2/df) - 1)) cos(2 pi v).
 * Source: JCGM 101:2008, 6.4; R. W. Bailey (1994), Mathematics of Computation 62, 779-781.
 */
export function fillLaw(law: InputLaw, uniform: Float64Array, second: Float64Array, count: number): void {
  const { mean } = law;
  switch (law.law) {
    case "normal":
      for (let i = 0; i < count; i++) uniform[i] = mean + law.sd * quickNormalQuantile(uniform[i] as number);
      return;
    case "rectangular":
      for (let i = 0; i < count; i++) uniform[i] = mean + law.halfWidth * (2 * (uniform[i] as number) - 1);
      return;
    case "triangular":
      for (let i = 0; i < count; i++) {
        const p = uniform[i] as number;
        uniform[i] = mean + law.halfWidth * (p < 0.5 ? Math.sqrt(2 * p) - 1 : 1 - Math.sqrt(2 - 2 * p));
      }
      return;
    case "u-shaped":
      for (let i = 0; i < count; i++) uniform[i] = mean - law.halfWidth * Math.cos(Math.PI * (uniform[i] as number));
      return;
    case "t": {
      const df = law.degreesOfFreedom;
      for (let i = 0; i < count; i++) {
        const radius = Math.sqrt(df * Math.expm1((-2 / df) * Math.log(uniform[i] as number)));
        uniform[i] = mean + law.scale * radius * Math.cos(2 * Math.PI * (second[i] as number));
      }
      return;
    }
  }
}

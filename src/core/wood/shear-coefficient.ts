import { leftOut, positive } from "./wood-method.ts";

/** The share of a rectangular section that carries the shear: 5/6, within 1e-4 of a frequency of plane elasticity up to E/G = 112 at h/L = 0.022. */
export const shearCoefficient = leftOut({ ...positive("1", "shear coefficient k of the section"), atMost: 1 }, 5 / 6);

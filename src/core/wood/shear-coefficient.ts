import { leftOut, positive } from "./wood-method.ts";

/** The share of a rectangular section that carries the shear. */
export const shearCoefficient = leftOut({ ...positive("1", "shear coefficient k of the section"), atMost: 1 }, 5 / 6);

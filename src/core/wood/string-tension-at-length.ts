import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Tension of the same string at the same pitch on another scale: T2 = T1 (L2 / L1)^2. tension: N; length1, length2: m. Result: N.
 * Source: ideal string, T = mu (2 L f)^2.
 */
export const stringTensionAtLength = (tension: number, length1: number, length2: number): number =>
  tension * (length2 / length1) ** 2;

export const stringTensionAtLengthMethod = woodMethod({
  id: "string-tension-at-length",
  name: "tension of a string on another scale length",
  inputs: {
    tension: positive("N", "tension at the first length"),
    length1: positive("m", "first sounding length"),
    length2: positive("m", "second sounding length"),
  },
  fields: { tension: { meaning: "tension at the second length, same string and pitch", dimension: "N" } },
  source: sources.string,
  run: ({ tension, length1, length2 }) => ({ tension: stringTensionAtLength(tension, length1, length2) }),
});

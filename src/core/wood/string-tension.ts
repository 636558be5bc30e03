import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Tension of a string: T = mu (2 L f)^2. unitMass: kg/m; length: m, the sounding one; frequency: Hz. Result: N. Source: ideal string.
 */
export const stringTension = (unitMass: number, length: number, frequency: number): number =>
  unitMass * (2 * length * frequency) ** 2;

export const stringTensionMethod = woodMethod({
  id: "string-tension",
  name: "tension of a string",
  inputs: {
    unitMass: positive("kg/m", "mass per length"),
    length: positive("m", "sounding length"),
    frequency: positive("Hz", "pitch"),
  },
  fields: { tension: { meaning: "tension", dimension: "N", usual: usualRanges.stringTension } },
  source: sources.string,
  run: ({ unitMass, length, frequency }) => ({ tension: stringTension(unitMass, length, frequency) }),
});

import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Moisture content as a fraction of the oven-dry mass: (wet - dry) / dry. 0.12 is 12 %.
 * wetMass, dryMass: kg, wetMass >= dryMass > 0. Source: ASTM D4442, ISO 3130 (oven-dry at 103 degrees Celsius).
 */
export const moistureContent = (wetMass: number, dryMass: number): number => (wetMass - dryMass) / dryMass;

export const moistureContentMethod = woodMethod({
  id: "moisture-content",
  name: "moisture content, oven-dry method",
  inputs: { wetMass: positive("kg", "mass as found"), dryMass: positive("kg", "oven-dry mass") },
  fields: { moisture: { meaning: "fraction of oven-dry mass", dimension: "%MC", usual: usualRanges.moistureFound } },
  source: sources.moistureTest,
  refuses: ({ wetMass, dryMass }) =>
    wetMass < dryMass
      ? { name: "wetMass (mass as found)", needed: "at least the oven-dry mass; the two may be swapped" }
      : null,
  run: ({ wetMass, dryMass }) => ({ moisture: moistureContent(wetMass, dryMass) }),
});

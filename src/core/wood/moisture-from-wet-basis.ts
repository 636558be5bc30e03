import { sources } from "./sources.ts";
import { notNegative, woodMethod } from "./wood-method.ts";

/**
 * Moisture of dry mass from moisture of wet mass, as other trades give it: w / (1 - w). Fractions; 0 <= w < 1.
 * Source: definition. @example moistureFromWetBasis(0.1) -> 0.1111
 */
export const moistureFromWetBasis = (wetBasis: number): number => wetBasis / (1 - wetBasis);

export const moistureFromWetBasisMethod = woodMethod({
  id: "moisture-from-wet-basis",
  name: "moisture content from a wet-basis figure",
  inputs: { wetBasis: { ...notNegative("%MC", "water as a fraction of the wet mass"), below: 1 } },
  fields: { moisture: { meaning: "fraction of oven-dry mass", dimension: "%MC" } },
  source: sources.definition,
  run: ({ wetBasis }) => ({ moisture: moistureFromWetBasis(wetBasis) }),
});

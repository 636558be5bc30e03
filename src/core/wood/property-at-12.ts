import { power } from "../base/index.ts";
import { intersectionCautions } from "./intersection-cautions.ts";
import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { leftOut, moistureInput, positive, woodMethod } from "./wood-method.ts";

/**
 * A mechanical property at 12 % from one found at moisture M: P12 = P ratio^(-(0.12 - M)/(Mp - 0.12)). The inverse of propertyAtMoisture.
 * found: property as found; ratio: P12/Pg, 12 % over green; moisture, intersection Mp (0.25 if unknown): fractions; M above Mp counts as Mp.
 * Result: as found. Source: Wood Handbook (GTR-190), equation 5-3. @example propertyAt12(11.5, 1.27, 0.075, 0.25) -> 10.587
 */
export const propertyAt12 = (found: number, ratio: number, moisture: number, intersection = 0.25): number =>
  found * power(ratio, -(0.12 - Math.min(moisture, intersection)) / (intersection - 0.12));

export const propertyAt12Method = woodMethod({
  id: "property-at-12",
  name: "property at 12 % from one found at another moisture content",
  inputs: {
    found: positive("Pa", "property as found"),
    ratio: { ...positive("1", "property at 12 % over that of green wood"), usual: usualRanges.dryOverGreen },
    moisture: { ...moistureInput("moisture content as found"), usual: usualRanges.moistureOfProperty },
    intersection: leftOut({ ...positive("%MC", "moisture above which it no longer changes"), above: 0.12 }, 0.25),
  },
  fields: { property: { meaning: "property at 12 %", dimension: "Pa" } },
  source: sources.handbookProperty,
  run: ({ found, ratio, moisture, intersection }) => ({ property: propertyAt12(found, ratio, moisture, intersection) }),
  cautions: ({ moisture, intersection }) => intersectionCautions(moisture, intersection),
});

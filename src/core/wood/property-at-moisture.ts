import { power } from "../base/index.ts";
import { intersectionCautions } from "./intersection-cautions.ts";
import { sources } from "./sources.ts";
import { usualCautions } from "./usual-cautions.ts";
import { usualRanges } from "./usual-ranges.ts";
import { leftOut, moistureInput, positive, woodMethod } from "./wood-method.ts";

/**
 * A mechanical property at another moisture content: P = P12 (P12/Pg)^((0.12 - M)/(Mp - 0.12)); above Mp the green value Pg.
 * at12: property at 12 %; green: property of green wood, same unit; moisture, intersection Mp (0.25 if unknown): fractions. Result: as at12.
 * Source: Wood Handbook (GTR-190), equation 5-3. @example propertyAtMoisture(10.8e9, 8.5e9, 0.08, 0.25) -> 11.63e9
 */
export const propertyAtMoisture = (at12: number, green: number, moisture: number, intersection = 0.25): number =>
  moisture >= intersection ? green : at12 * power(at12 / green, (0.12 - moisture) / (intersection - 0.12));

export const propertyAtMoistureMethod = woodMethod({
  id: "property-at-moisture",
  name: "property at another moisture content",
  inputs: {
    at12: positive("Pa", "property at 12 %"),
    green: positive("Pa", "property of green wood"),
    moisture: { ...moistureInput("moisture content"), usual: usualRanges.moistureOfProperty },
    intersection: leftOut({ ...positive("%MC", "moisture above which it no longer changes"), above: 0.12 }, 0.25),
  },
  fields: { property: { meaning: "property at this moisture", dimension: "Pa" } },
  source: sources.handbookProperty,
  run: ({ at12, green, moisture, intersection }) => ({
    property: propertyAtMoisture(at12, green, moisture, intersection),
  }),
  cautions: ({ at12, green, moisture, intersection }) => [
    ...usualCautions({ "at12 over green": { usual: usualRanges.dryOverGreen } }, { "at12 over green": at12 / green }),
    ...intersectionCautions(moisture, intersection),
  ],
});

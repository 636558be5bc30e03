import { dryness } from "./fibre-saturation.ts";
import { fibreSaturationCautions } from "./fibre-saturation-cautions.ts";
import { sources } from "./sources.ts";
import { moistureInput, woodDensity, woodMethod } from "./wood-method.ts";

const AVERAGE_SHRINKAGE = 0.265;

/**
 * Specific gravity (oven-dry mass, volume at moisture M) from the density at M: density / (1000 (1 + M)).
 * density: kg/m3, > 0; moisture: fraction, >= 0. Source: Wood Handbook (GTR-190), chapter 4.
 */
export const specificGravity = (density: number, moisture: number): number => density / (1000 * (1 + moisture));

/** Specific gravity at moisture M from the basic one (green volume): Gb / (1 - S a), S the volumetric shrinkage to oven-dry (fraction of green; by default 0.265 Gb), a = (0.30 - M)/0.30. Source: Wood Handbook, equations 4-7, 4-9. */
export const specificGravityFromBasic = (
  basic: number,
  moisture: number,
  shrinkage = AVERAGE_SHRINKAGE * basic,
): number => basic / (1 - shrinkage * dryness(moisture));

/** Basic specific gravity from the one at moisture M, average shrinkage: G / (1 + 0.265 a G). The inverse of the above. */
export const basicFromSpecificGravity = (gravity: number, moisture: number): number =>
  gravity / (1 + AVERAGE_SHRINKAGE * dryness(moisture) * gravity);

export const specificGravityMethod = woodMethod({
  id: "specific-gravity",
  name: "specific gravity, oven-dry mass over volume as found",
  inputs: { density: woodDensity(), moisture: moistureInput("moisture content") },
  fields: {
    specificGravity: { meaning: "oven-dry mass over volume at this moisture, water = 1", dimension: "1" },
    basic: { meaning: "oven-dry mass over green volume, water = 1", dimension: "1" },
  },
  source: sources.handbook,
  run: ({ density, moisture }) => {
    const gravity = specificGravity(density, moisture);
    return { specificGravity: gravity, basic: basicFromSpecificGravity(gravity, moisture) };
  },
  cautions: ({ moisture }) => fibreSaturationCautions(moisture),
});

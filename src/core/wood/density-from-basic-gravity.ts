import { fibreSaturationCautions } from "./fibre-saturation-cautions.ts";
import { sources } from "./sources.ts";
import { specificGravity, specificGravityFromBasic } from "./specific-gravity.ts";
import { usualRanges } from "./usual-ranges.ts";
import { anyReal, leftOut, moistureInput, positive, woodMethod } from "./wood-method.ts";

/**
 * Density at moisture M from the basic specific gravity: 1000 G_M (1 + M).
 * basic: oven-dry mass over green volume, > 0; moisture: fraction; shrinkage: the species' own volumetric one as a fraction of green, by default 0.265 times basic.
 * Result: kg/m3. Source: Wood Handbook, equations 4-7 and 4-9.
 */
export const densityFromBasicGravity = (basic: number, moisture: number, shrinkage = 0.265 * basic): number =>
  1000 * specificGravityFromBasic(basic, moisture, shrinkage) * (1 + moisture);

export const densityFromBasicGravityMethod = woodMethod({
  id: "density-from-basic-gravity",
  name: "density from a basic specific gravity",
  inputs: {
    basic: positive("1", "oven-dry mass over green volume, water = 1"),
    moisture: moistureInput("moisture content"),
    shrinkage: leftOut(
      { ...anyReal("1", "volumetric shrinkage to oven-dry, fraction of green; average rule if left out"), below: 1 },
      -1,
    ),
  },
  fields: {
    density: { meaning: "density at this moisture", dimension: "kg/m3", usual: usualRanges.density },
    specificGravity: { meaning: "oven-dry mass over volume at this moisture", dimension: "1" },
  },
  source: sources.handbookShrinkage,
  run: ({ basic, moisture, shrinkage }) => {
    const density =
      shrinkage < 0 ? densityFromBasicGravity(basic, moisture) : densityFromBasicGravity(basic, moisture, shrinkage);
    return { density, specificGravity: specificGravity(density, moisture) };
  },
  cautions: ({ moisture }) => fibreSaturationCautions(moisture),
});

import { fibreSaturationCautions } from "./fibre-saturation-cautions.ts";
import { sources } from "./sources.ts";
import { basicFromSpecificGravity, specificGravity, specificGravityFromBasic } from "./specific-gravity.ts";
import { usualRanges } from "./usual-ranges.ts";
import { leftOut, moistureInput, woodDensity, woodMethod } from "./wood-method.ts";

/**
 * Density at another moisture content: by way of the basic specific gravity, so that mass and volume change together.
 * density: kg/m3 at moisture `from`; from, to: fractions, 0 <= M; average shrinkage 26.5 % times basic specific gravity. Result: kg/m3.
 * Above 0.30 swelling stops, and meters are not reliable there. Source: Wood Handbook, equations 4-7 and 4-9.
 * @example densityAtMoisture(420, 0.08, 0.12) -> 429.65
 */
export const densityAtMoisture = (density: number, from: number, to: number): number =>
  1000 * specificGravityFromBasic(basicFromSpecificGravity(specificGravity(density, from), from), to) * (1 + to);

export const densityAtMoistureMethod = woodMethod({
  id: "density-at-moisture",
  name: "density at another moisture content",
  inputs: {
    density: woodDensity(),
    from: moistureInput("moisture content as found"),
    to: leftOut(moistureInput("moisture content wanted, 12 % as a rule"), 0.12),
  },
  fields: { density: { meaning: "density at the wanted moisture", dimension: "kg/m3", usual: usualRanges.density } },
  source: sources.handbookShrinkage,
  run: ({ density, from, to }) => ({ density: densityAtMoisture(density, from, to) }),
  cautions: ({ from, to }) => fibreSaturationCautions(from, to),
});

import type { Caution } from "../base/index.ts";

const LIGHTEST = 100;
const HEAVIEST = 1400;

/** The caution of a density, in kg/m3, that no wood has: almost certainly a slip of units. Balsa is about 160, the substance of cell walls 1500. */
export const densityCautions = (density: number): readonly Caution[] =>
  density >= LIGHTEST && density <= HEAVIEST
    ? []
    : [
        {
          code: "unlikely-density",
          facts: { density: Number(density.toPrecision(3)), likely: density < LIGHTEST ? "lighter" : "heavier" },
        },
      ];

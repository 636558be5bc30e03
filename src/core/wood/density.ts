import { densityCautions } from "./density-cautions.ts";
import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Density of a rectangular piece: mass / (length width thickness).
 * mass: kg; length, width, thickness: m; all > 0. For several thickness readings use their mean. Result: kg/m3.
 * A wood below 100 or above 1400 kg/m3 is almost certainly a slip of units. Source: definition.
 * @example density(0.1824, 0.55, 0.205, 0.00402) -> 402.4
 */
export const density = (mass: number, length: number, width: number, thickness: number): number =>
  mass / (length * width * thickness);

export const densityMethod = woodMethod({
  id: "density",
  name: "density of a rectangular piece",
  inputs: {
    mass: positive("kg", "mass of the piece"),
    length: positive("m", "length along the grain"),
    width: positive("m", "width across the grain"),
    thickness: positive("m", "thickness"),
  },
  fields: { density: { meaning: "density", dimension: "kg/m3" } },
  source: sources.definition,
  run: ({ mass, length, width, thickness }) => ({ density: density(mass, length, width, thickness) }),
  cautions: (_, fields) => densityCautions(fields.density),
});

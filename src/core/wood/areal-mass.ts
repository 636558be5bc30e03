import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Mass for each square metre of a plate: mass / (length width). Needs no thickness.
 * mass: kg; length, width: m; all > 0. Result: kg/m2. Source: definition.
 */
export const arealMass = (mass: number, length: number, width: number): number => mass / (length * width);

export const arealMassMethod = woodMethod({
  id: "areal-mass",
  name: "mass per area of a plate",
  inputs: {
    mass: positive("kg", "mass of the piece"),
    length: positive("m", "length along the grain"),
    width: positive("m", "width across the grain"),
  },
  fields: { arealMass: { meaning: "mass per area", dimension: "kg/m2" } },
  source: sources.definition,
  run: ({ mass, length, width }) => ({ arealMass: arealMass(mass, length, width) }),
});

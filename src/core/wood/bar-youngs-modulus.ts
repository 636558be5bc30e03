import { power } from "../base/index.ts";
import { FREE_BAR_CONSTANT } from "./free-bar-roots.ts";
import { shearCautions } from "./shear-cautions.ts";
import { sources } from "./sources.ts";
import { leftOut, modulusField, positive, woodMethod } from "./wood-method.ts";

/**
 * Young's modulus along a strip or board from its lowest bending frequency, held free at the nodes (22.4 % from each end):
 * E = 0.94641465 m f^2 L^3 / (b h^3), times the shear factor where one is given.
 * mass: kg; length, width, thickness: m; frequency: Hz; all > 0. shear: factor T of barShearFactor, 1 by default (thin plates).
 * Result: Pa. Relative 3e-3 for h/L < 0.0075 without a shear factor; a brace on edge needs one. The thickness enters cubed: 1 % in h is 3 % in E.
 * Source: Euler-Bernoulli free bar (e.g. Rayleigh, The Theory of Sound, vol. 1, chapter 8).
 * @example barYoungsModulus(0.0421, 0.55, 0.05, 0.0034, 61.3) -> 12.68e9
 */
export const barYoungsModulus = (
  mass: number,
  length: number,
  width: number,
  thickness: number,
  frequency: number,
  shear = 1,
): number => (shear * FREE_BAR_CONSTANT * mass * frequency ** 2 * power(length, 3)) / (width * power(thickness, 3));

export const barYoungsModulusMethod = woodMethod({
  id: "bar-stiffness",
  name: "Young's modulus from the lowest bending frequency of a free bar",
  inputs: {
    mass: positive("kg", "mass of the piece"),
    length: positive("m", "length along the grain"),
    width: positive("m", "width across the grain"),
    thickness: positive("m", "thickness"),
    frequency: positive("Hz", "lowest bending frequency, held free"),
    shear: leftOut(positive("1", "shear factor, see bar-shear-factor"), 1),
  },
  fields: { youngsModulus: modulusField("Young's modulus along the length") },
  source: sources.beamTheory,
  run: ({ mass, length, width, thickness, frequency, shear }) => ({
    youngsModulus: barYoungsModulus(mass, length, width, thickness, frequency, shear),
  }),
  cautions: ({ length, thickness, shear }) => (shear === 1 ? shearCautions("Length", length, thickness) : []),
});

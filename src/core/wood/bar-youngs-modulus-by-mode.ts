import { power } from "../base/index.ts";
import { freeBarRoot } from "./free-bar-root.ts";
import { modeInput } from "./mode-input.ts";
import { shearCautions } from "./shear-cautions.ts";
import { sources } from "./sources.ts";
import { modulusField, positive, woodMethod } from "./wood-method.ts";

/**
 * Young's modulus from any bending frequency of a free bar: E = 48 pi^2 m f^2 L^3 / (x_n^4 b h^3).
 * As barYoungsModulus; mode: 1, 2, 3 … Result: Pa. Source: as barYoungsModulus.
 */
export const barYoungsModulusByMode = (
  mass: number,
  length: number,
  width: number,
  thickness: number,
  frequency: number,
  mode: number,
): number =>
  (48 * Math.PI ** 2 * mass * frequency ** 2 * power(length, 3)) /
  (power(freeBarRoot(mode), 4) * width * power(thickness, 3));

export const barYoungsModulusByModeMethod = woodMethod({
  id: "bar-stiffness-by-mode",
  name: "Young's modulus from a higher bending frequency of a free bar",
  inputs: {
    mass: positive("kg", "mass of the piece"),
    length: positive("m", "length along the grain"),
    width: positive("m", "width across the grain"),
    thickness: positive("m", "thickness"),
    frequency: positive("Hz", "bending frequency of this mode"),
    mode: modeInput,
  },
  fields: { youngsModulus: modulusField("Young's modulus along the length") },
  source: sources.beamTheory,
  run: ({ mass, length, width, thickness, frequency, mode }) => ({
    youngsModulus: barYoungsModulusByMode(mass, length, width, thickness, frequency, mode),
  }),
  cautions: ({ length, thickness }) => shearCautions("Length", length, thickness),
});

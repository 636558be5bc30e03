import { power } from "../base/index.ts";
import { deflectionCautions } from "./deflection-cautions.ts";
import { shearCautions } from "./shear-cautions.ts";
import { sources } from "./sources.ts";
import { modulusField, positive, woodMethod } from "./wood-method.ts";

/**
 * Young's modulus from bending of a piece clamped at one end: E = 4 F L^3 / (b h^3 y).
 * force: N; deflection, length (free length), width, thickness: m; all > 0. Result: Pa. Source: beam theory.
 */
export const cantileverModulus = (
  force: number,
  deflection: number,
  length: number,
  width: number,
  thickness: number,
): number => (4 * force * power(length, 3)) / (width * power(thickness, 3) * deflection);

export const cantileverModulusMethod = woodMethod({
  id: "cantilever-stiffness",
  name: "Young's modulus from a clamped strip",
  inputs: {
    force: positive("N", "load, a force and not a mass"),
    deflection: positive("m", "deflection under the load"),
    length: positive("m", "free length"),
    width: positive("m", "width across the grain"),
    thickness: positive("m", "thickness"),
  },
  fields: { youngsModulus: modulusField("apparent Young's modulus") },
  source: sources.beamTheory,
  run: ({ force, deflection, length, width, thickness }) => ({
    youngsModulus: cantileverModulus(force, deflection, length, width, thickness),
  }),
  cautions: ({ deflection, length, thickness }) => [
    ...deflectionCautions(deflection, length),
    ...shearCautions("Free length", length, thickness),
  ],
});

import { power } from "../base/index.ts";
import { deflectionCautions } from "./deflection-cautions.ts";
import { shearCautions } from "./shear-cautions.ts";
import { sources } from "./sources.ts";
import { modulusField, positive, woodMethod } from "./wood-method.ts";

/**
 * Young's modulus from bending between two supports, loaded in the middle: E = F L^3 / (4 b h^3 y).
 * force: N (500 g is 4.903 N); deflection, span, width, thickness: m; all > 0. Use the slope over several loads. Result: Pa.
 * Source: beam theory; the same form in ASTM D143 and ISO 13061-4. @example threePointModulus(4.905, 0.00185, 0.45, 0.2, 0.003) -> 11.19e9
 */
export const threePointModulus = (
  force: number,
  deflection: number,
  span: number,
  width: number,
  thickness: number,
): number => (force * power(span, 3)) / (4 * width * power(thickness, 3) * deflection);

export const threePointModulusMethod = woodMethod({
  id: "three-point-stiffness",
  name: "Young's modulus from three-point bending",
  inputs: {
    force: positive("N", "load, a force and not a mass"),
    deflection: positive("m", "deflection under the load"),
    span: positive("m", "distance between the supports"),
    width: positive("m", "width across the grain"),
    thickness: positive("m", "thickness"),
  },
  fields: { youngsModulus: modulusField("apparent Young's modulus") },
  source: sources.beamTheory,
  run: ({ force, deflection, span, width, thickness }) => ({
    youngsModulus: threePointModulus(force, deflection, span, width, thickness),
  }),
  cautions: ({ deflection, span, thickness }) => [
    ...deflectionCautions(deflection, span),
    ...shearCautions("Span", span, thickness),
  ],
});

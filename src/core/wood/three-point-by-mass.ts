import { deflectionCautions } from "./deflection-cautions.ts";
import { shearCautions } from "./shear-cautions.ts";
import { sources } from "./sources.ts";
import { threePointModulus } from "./three-point-modulus.ts";
import { modulusField, positive, woodMethod } from "./wood-method.ts";

/** Standard acceleration of free fall in m/s2, exact by definition (CGPM 1901). */
export const STANDARD_GRAVITY = 9.80665;

/** Young's modulus from three-point bending under a hung mass: as threePointModulus with force = mass times 9.80665 m/s2. kg, m. Result: Pa. */
export const threePointByMass = (
  mass: number,
  deflection: number,
  span: number,
  width: number,
  thickness: number,
): number => threePointModulus(mass * STANDARD_GRAVITY, deflection, span, width, thickness);

export const threePointByMassMethod = woodMethod({
  id: "three-point-stiffness-by-mass",
  name: "Young's modulus from three-point bending under a mass",
  inputs: {
    mass: positive("kg", "mass hung from the middle"),
    deflection: positive("m", "deflection under the load"),
    span: positive("m", "distance between the supports"),
    width: positive("m", "width across the grain"),
    thickness: positive("m", "thickness"),
  },
  fields: {
    youngsModulus: modulusField("apparent Young's modulus"),
    force: { meaning: "weight of the mass", dimension: "N" },
  },
  source: sources.beamTheory,
  run: ({ mass, deflection, span, width, thickness }) => ({
    youngsModulus: threePointByMass(mass, deflection, span, width, thickness),
    force: mass * STANDARD_GRAVITY,
  }),
  cautions: ({ deflection, span, thickness }) => [
    ...deflectionCautions(deflection, span),
    ...shearCautions("Span", span, thickness),
  ],
});

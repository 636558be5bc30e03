import { shearCoefficient } from "./shear-coefficient.ts";
import { shortShapeCautions } from "./short-shape-cautions.ts";
import { sources } from "./sources.ts";
import { modulusField, positive, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Young's modulus freed of the shear deflection of three-point bending: E = E_app [1 + (E/G)(h/span)^2 / k], k = 5/6.
 * apparent: Pa; modulusRatio: E/G; thickness, span: m. Result: Pa. Source: beam theory, central load.
 */
export const bendingShearCorrected = (
  apparent: number,
  modulusRatio: number,
  thickness: number,
  span: number,
  coefficient = 5 / 6,
): number => apparent * (1 + (modulusRatio * (thickness / span) ** 2) / coefficient);

/** Span over thickness from which on what the load and the supports press in locally is left out without a word. Common practice, no source. */
const LONG = 5;

export const bendingShearCorrectedMethod = woodMethod({
  id: "bending-shear-corrected",
  name: "Young's modulus of three-point bending freed of shear",
  inputs: {
    apparent: woodModulus("apparent Young's modulus"),
    modulusRatio: positive("1", "Young's modulus over shear modulus"),
    thickness: positive("m", "thickness"),
    span: positive("m", "distance between the supports"),
    coefficient: shearCoefficient,
  },
  fields: { youngsModulus: modulusField("Young's modulus") },
  source: sources.beamTheory,
  run: ({ apparent, modulusRatio, thickness, span, coefficient }) => ({
    youngsModulus: bendingShearCorrected(apparent, modulusRatio, thickness, span, coefficient),
  }),
  cautions: ({ span, thickness }) => shortShapeCautions("Span over thickness", span, thickness, LONG),
});

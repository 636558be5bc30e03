// Uncertainty of the quantities of wood, as the catalogue takes it.
import type { Method } from "../../base/index.ts";
import { barStiffnessUncertainty } from "./bar-stiffness-uncertainty.ts";
import { commonScaleError, thicknessErrorEffect } from "./common-scale-error.ts";
import { rectangularUncertainty } from "./rectangular-uncertainty.ts";
import { relativeUncertaintyMethods } from "./relative-uncertainty-methods.ts";
import { speciesModuli } from "./species-moduli.ts";

export const errorMethods: readonly Method[] = [
  ...relativeUncertaintyMethods,
  barStiffnessUncertainty,
  commonScaleError,
  thicknessErrorEffect,
  rectangularUncertainty,
  speciesModuli,
];

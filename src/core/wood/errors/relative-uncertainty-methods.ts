// Relative uncertainty of what is computed from a bar, a bent strip or a plate: the records.
import type { Method } from "../../base/index.ts";
import { BAR_EXPONENTS, PLATE_EXPONENTS, THREE_POINT_EXPONENTS } from "./power-law-uncertainty.ts";
import { relativeUncertaintyMethod } from "./relative-uncertainty-method.ts";

export const relativeUncertaintyMethods: readonly Method[] = [
  relativeUncertaintyMethod("bar-relative-uncertainty", "relative uncertainty of what a tapped bar gives", {
    youngsModulus: { meaning: "Young's modulus", exponents: BAR_EXPONENTS.youngsModulus },
    density: { meaning: "density", exponents: BAR_EXPONENTS.density },
    radiationRatio: { meaning: "the radiation ratio", exponents: BAR_EXPONENTS.radiationRatio },
    soundSpeed: { meaning: "the speed of sound", exponents: BAR_EXPONENTS.soundSpeed },
  }),
  relativeUncertaintyMethod("three-point-relative-uncertainty", "relative uncertainty of E in three-point bending", {
    youngsModulus: { meaning: "Young's modulus", exponents: THREE_POINT_EXPONENTS },
  }),
  relativeUncertaintyMethod("plate-relative-uncertainty", "relative uncertainty of a free plate's moduli", {
    alongModulus: { meaning: "E along the grain", exponents: PLATE_EXPONENTS.alongModulus },
    acrossModulus: { meaning: "E across the grain", exponents: PLATE_EXPONENTS.acrossModulus },
    shearModulus: { meaning: "the in-plane shear modulus", exponents: PLATE_EXPONENTS.shearModulus },
  }),
];

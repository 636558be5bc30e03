import { power } from "../../base/index.ts";
import type { WoodInput } from "../wood-method.ts";
import { woodMethod } from "../wood-method.ts";
import { BAR_EXPONENTS, type Exponents } from "./power-law-uncertainty.ts";

/**
 * Relative change of a product of powers when several inputs are off by one common factor: (1 + g)^(sum of their exponents) - 1.
 * g > -1: relative error, 0.004 where everything reads 0.4 % long; exponents: of the quantity; shared: the inputs measured with that instrument.
 * Result: relative, exact. Errors that are the same in several inputs add with their signs and not in quadrature. Source: derived.
 * @example scaleErrorEffect(0.004, { L: 3, b: -1, h: -3 }, ["L", "b", "h"]) // -0.003984
 */
export function scaleErrorEffect(g: number, exponents: Exponents, shared: readonly string[]): number {
  const exponent = shared.reduce((sum, name) => sum + (exponents[name] ?? 0), 0);
  return exponent === 0 ? 0 : power(1 + g, exponent) - 1;
}

const source = { citation: "by the exponents of each formula; JCGM 100:2008, 5.2.2", basis: "derived" } as const;
const error = (meaning: string): WoodInput => ({ kind: "quantity", dimension: "1", meaning, above: -1 });
const change = (meaning: string) => ({ meaning: `relative change of ${meaning}`, dimension: "1" });

/** One calliper for length, width and thickness: its scale error goes into all three at once. */
export const commonScaleError = woodMethod({
  id: "common-scale-error",
  name: "what a scale error of the one calliper does",
  inputs: { scaleError: error("relative error of every reading of the calliper") },
  fields: {
    youngsModulus: change("Young's modulus"),
    density: change("density"),
    radiationRatio: change("the radiation ratio"),
    soundSpeed: change("the speed of sound"),
  },
  source,
  run: ({ scaleError }) => {
    const effect = (exponents: Exponents) => scaleErrorEffect(scaleError, exponents, ["length", "width", "thickness"]);
    return {
      youngsModulus: effect(BAR_EXPONENTS.youngsModulus),
      density: effect(BAR_EXPONENTS.density),
      radiationRatio: effect(BAR_EXPONENTS.radiationRatio),
      soundSpeed: effect(BAR_EXPONENTS.soundSpeed),
    };
  },
});

/** E where the density is known separately: f^2 L^4 / h^2. */
const KNOWN_DENSITY = { frequency: 2, length: 4, thickness: -2 } as const;

/** The thickness alone is off: what that does to each quantity. */
export const thicknessErrorEffect = woodMethod({
  id: "thickness-error-effect",
  name: "what an error of the thickness does",
  inputs: { thicknessError: error("relative error of the thickness") },
  fields: {
    youngsModulus: change("Young's modulus, where the piece was weighed"),
    youngsModulusAtKnownDensity: change("Young's modulus, where the density is known separately"),
    density: change("density"),
    radiationRatio: change("the radiation ratio"),
    soundSpeed: change("the speed of sound"),
  },
  source,
  run: ({ thicknessError }) => {
    const effect = (exponents: Exponents) => scaleErrorEffect(thicknessError, exponents, ["thickness"]);
    return {
      youngsModulus: effect(BAR_EXPONENTS.youngsModulus),
      youngsModulusAtKnownDensity: effect(KNOWN_DENSITY),
      density: effect(BAR_EXPONENTS.density),
      radiationRatio: effect(BAR_EXPONENTS.radiationRatio),
      soundSpeed: effect(BAR_EXPONENTS.soundSpeed),
    };
  },
});

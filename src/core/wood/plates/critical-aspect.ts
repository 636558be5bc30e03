import { sources } from "../sources.ts";
import { woodMethod, woodModulus } from "../wood-method.ts";
import { axesCautions } from "./axes-cautions.ts";

/**
 * Length over width at which a free plate's two bendings have the same strip frequency and mix into a ring and a cross: (E_L/E_R)^(1/4). Pa. Result: 1.
 * Source: McIntyre and Woodhouse, Acta Metall. 36 (1988) 1397-1416. @example criticalAspect(11e9, 0.85e9) -> 1.8967
 */
export const criticalAspect = (along: number, across: number): number => Math.sqrt(Math.sqrt(along / across));

export const criticalAspectMethod = woodMethod({
  id: "critical-aspect",
  name: "length over width at which the two bendings of a plate mix",
  inputs: {
    along: woodModulus("Young's modulus along the grain, E_L"),
    across: woodModulus("Young's modulus across the grain, E_R"),
  },
  fields: { aspect: { meaning: "length over width", dimension: "1" } },
  source: sources.plateInverse,
  run: ({ along, across }) => ({ aspect: criticalAspect(along, across) }),
  cautions: ({ along, across }) => axesCautions(along, across),
});

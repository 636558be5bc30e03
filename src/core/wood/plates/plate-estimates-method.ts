import { sources } from "../sources.ts";
import { modulusField, positive, woodMethod } from "../wood-method.ts";
import { mixingCautions } from "./mixing-cautions.ts";
import { moduliGuess, TWIST_CONSTANT, TWIST_LOWER_CONSTANT } from "./moduli-guess.ts";
import { plateInputs } from "./plate-inputs.ts";

const { length, width, thickness, density } = plateInputs;

/** Moduli of a plate on the back of an envelope; plate-moduli is exact. See moduliGuess. */
export const plateEstimatesMethod = woodMethod({
  id: "plate-estimates",
  name: "moduli of a plate by strip formulas",
  inputs: {
    length,
    width,
    thickness,
    density,
    long: positive("Hz", "frequency of the first bending along the grain"),
    cross: positive("Hz", "frequency of the first bending across the grain"),
    twist: positive("Hz", "frequency of the twist"),
  },
  fields: {
    along: modulusField("Young's modulus along the grain, E_L, as of a strip"),
    across: modulusField("Young's modulus across the grain, E_R, as of a strip"),
    shear: { meaning: "shear modulus G_LR with the constant pi^2/12: a lower bound", dimension: "Pa" },
    likelyShear: { meaning: "shear modulus G_LR with the constant 0.90 of usual plates of wood", dimension: "Pa" },
  },
  source: sources.plateInverse,
  run: ({ long, cross, twist, ...plate }) => ({
    ...moduliGuess(plate, { long, cross, twist }, TWIST_LOWER_CONSTANT),
    likelyShear: moduliGuess(plate, { long, cross, twist }, TWIST_CONSTANT).shear,
  }),
  cautions: ({ long, cross }) => [
    ...mixingCautions(long, cross),
    { code: "lower-bound", facts: { name: "G_LR", share: "8 to 12 %" } },
  ],
});

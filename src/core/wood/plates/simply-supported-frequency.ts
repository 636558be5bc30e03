import { declined, succeeded } from "../../base/index.ts";
import { shearCautions } from "../shear-cautions.ts";
import { sources } from "../sources.ts";
import { woodAnswer } from "../wood-answer.ts";
import { leftOut, type WoodInput } from "../wood-method.ts";
import { axesCautions } from "./axes-cautions.ts";
import type { Plate } from "./plate.ts";
import { isPoissonAdmissible, plateInputs } from "./plate-inputs.ts";
import { plateStiffness } from "./plate-stiffness.ts";

/**
 * Frequency of a thin orthotropic rectangle simply supported all round, m half waves along and n across the grain:
 * (pi/2) sqrt([D_L m^4/a^4 + 2 (D_1 + 2 D_k) m^2 n^2/(a^2 b^2) + D_R n^4/b^4]/(density h)). SI. Result: Hz, exact for the thin plate.
 * A soundboard is neither free nor simply supported. Source: Leissa, Vibration of Plates (NASA SP-160, 1969), chapter 9.
 */
export function simplySupportedFrequency(plate: Plate, m: number, n: number): number {
  const [along, across, coupling, twist] = plateStiffness(plate);
  const [x, y] = [(m / plate.length) ** 2, (n / plate.width) ** 2];
  const bending = along * x * x + 2 * (coupling + 2 * twist) * x * y + across * y * y;
  return (Math.PI / 2) * Math.sqrt(bending / (plate.density * plate.thickness));
}

const { shearAlong: _, shearAcross: __, coefficient: ___, ...inputs } = plateInputs;
const halfWaves = (where: string): WoodInput =>
  leftOut({ kind: "number", dimension: "1", meaning: `half waves ${where} the grain`, whole: true, atLeast: 1 }, 1);

export const simplySupportedFrequencyMethod = woodAnswer({
  id: "simply-supported-frequency",
  name: "frequency of a simply supported plate",
  inputs: { ...inputs, m: halfWaves("along"), n: halfWaves("across") },
  fields: { frequency: { meaning: "frequency", dimension: "Hz" } },
  source: sources.plate,
  run: ({ m, n, ...plate }) =>
    isPoissonAdmissible(plate.poisson, plate.along, plate.across)
      ? succeeded({ frequency: simplySupportedFrequency(plate, m, n) })
      : declined("poisson-too-large", { poisson: String(plate.poisson) }),
  cautions: ({ length, width, thickness, along, across }) => [
    ...axesCautions(along, across),
    ...shearCautions("The shorter side", Math.min(length, width), thickness),
  ],
});

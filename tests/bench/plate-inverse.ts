// Moduli of a plate from three frequencies, against one forward solution with as many polynomials: how many solutions the way back costs.
import { plateModes, plateModuli } from "../../src/core/wood/index.ts";
import { type BenchLine, benchLine, timeOf } from "./bench-line.ts";

const plate = {
  length: 0.55,
  width: 0.205,
  thickness: 0.004,
  density: 410,
  along: 11.2e9,
  across: 0.87e9,
  shear: 0.72e9,
  poisson: 0.37,
};
const through = { shearAlong: 0.69e9, shearAcross: 0.035e9, coefficient: 5 / 6 };

/** A soundboard half back from its frequencies; aim: the 50 ms that a maker does not notice. */
export async function plateInverse(): Promise<BenchLine> {
  const frequencies = plateModes(plate);
  const found = plateModuli(plate, frequencies);
  if (!found.ok || !(Math.abs(found.value.along / plate.along - 1) < 1e-8))
    throw new Error("the plate does not come back");
  const withShear = await timeOf(() => plateModuli(plate, frequencies, through));
  const line = await benchLine({
    name: "plate inverse, Rayleigh-Ritz, 12 x 12 polynomials",
    baseline: "one forward solution, all four parity classes",
    ours: () => plateModuli(plate, frequencies),
    theirs: () => plateModes(plate),
    rounds: 25,
    note: `${found.value.steps} Newton steps; with shear through the thickness, once: ${withShear.toFixed(0)} ms`,
  });
  return { ...line, aim: { words: "at most 50 ms", within: line.ours <= 50 } };
}

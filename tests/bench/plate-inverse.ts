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

const AIM = 50;
const aimed = (line: BenchLine): BenchLine => ({
  ...line,
  aim: { words: `at most ${AIM} ms`, within: line.ours <= AIM },
});

/** A soundboard half back from its frequencies, thin and with shear through the thickness; aim: the 50 ms that a maker does not notice. */
export async function plateInverse(): Promise<readonly BenchLine[]> {
  const frequencies = plateModes(plate);
  const found = plateModuli(plate, frequencies);
  if (!found.ok || !(Math.abs(found.value.along / plate.along - 1) < 1e-8))
    throw new Error("the plate does not come back");
  const cold = await timeOf(() => plateModuli(plate, frequencies, through));
  const baseline = "one forward solution of the thin plate, all four parity classes";
  return [
    aimed(
      await benchLine({
        name: "plate inverse, Rayleigh-Ritz, 12 x 12 polynomials",
        baseline,
        ours: () => plateModuli(plate, frequencies),
        theirs: () => plateModes(plate),
        rounds: 25,
        note: `${found.value.steps} Newton steps`,
      }),
    ),
    aimed(
      await benchLine({
        name: "plate inverse with shear through the thickness, 16 x 16",
        baseline,
        ours: () => plateModuli(plate, frequencies, through),
        theirs: () => plateModes(plate),
        note: `the first of the process ${cold.toFixed(0)} ms`,
      }),
    ),
  ];
}

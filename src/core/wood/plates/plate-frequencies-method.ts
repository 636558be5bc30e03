import { declined, type MethodFields, type Outcome, succeeded } from "../../base/index.ts";
import { barFrequency } from "../bar-frequency.ts";
import { shearCautions } from "../shear-cautions.ts";
import { sources } from "../sources.ts";
import { woodAnswer } from "../wood-answer.ts";
import { axesCautions } from "./axes-cautions.ts";
import { isMixed, mixingCautions } from "./mixing-cautions.ts";
import type { Plate } from "./plate.ts";
import { isPoissonAdmissible, modesInput, plateInputs, polynomialsInput } from "./plate-inputs.ts";
import { type PlateModes, POLYNOMIALS, plateModes } from "./plate-modes.ts";
import { plateModesWithShear, SHEAR_POLYNOMIALS } from "./plate-modes-with-shear.ts";

const { shearAlong, shearAcross, coefficient, ...thin } = plateInputs;
const frequency = (meaning: string) => ({ meaning, dimension: "Hz" });
const fields = {
  twist: frequency("frequency of the twist, one nodal line each way"),
  long: frequency("frequency of the first bending along the grain"),
  cross: frequency("frequency of the first bending across the grain"),
  mixed: {
    meaning:
      "whether the strip frequencies of the two bendings lie within 25 %, so that they mix and their names are not safe",
  },
  frequencies: frequency("frequencies of the lowest modes, rigid motions left out, lowest first"),
  shapes: {
    meaning: "their shapes: twist, long1, cross1 …, or a1l2 for one nodal line along the grain and two across it",
  },
  ...Object.fromEntries(
    ["lowest", "second", "third", "fourth", "fifth", "sixth"].map((which, at) => [
      `frequency${at + 1}`,
      frequency(`the ${which} of the frequencies`),
    ]),
  ),
};

const stripFrequencies = ({ along, across, density, length, width, thickness }: Plate) => ({
  long: barFrequency(along, density, length, thickness),
  cross: barFrequency(across, density, width, thickness),
});

function answered(plate: Plate, solve: () => PlateModes): Outcome<MethodFields> {
  if (!isPoissonAdmissible(plate.poisson, plate.along, plate.across))
    return declined("poisson-too-large", { poisson: String(plate.poisson) });
  const { lowest, long, cross, twist } = solve();
  const strip = stripFrequencies(plate);
  return succeeded({
    twist,
    long,
    cross,
    mixed: isMixed(strip.long, strip.cross),
    frequencies: lowest.map((mode) => mode.frequency),
    shapes: lowest.map((mode) => mode.shape),
    ...Object.fromEntries(lowest.slice(0, 6).map((mode, at) => [`frequency${at + 1}`, mode.frequency])),
  });
}

const mixing = (plate: Plate) => {
  const { long, cross } = stripFrequencies(plate);
  return [...axesCautions(plate.along, plate.across), ...mixingCautions(long, cross)];
};

export const plateFrequenciesMethod = woodAnswer({
  id: "plate-frequencies",
  name: "frequencies of a free, thin plate",
  inputs: { ...thin, modes: modesInput, polynomials: polynomialsInput(POLYNOMIALS) },
  fields,
  source: sources.ritzPlate,
  run: ({ modes, polynomials, ...plate }) => answered(plate, () => plateModes(plate, modes, polynomials)),
  cautions: (plate) => [
    ...mixing(plate),
    ...shearCautions("The shorter side", Math.min(plate.length, plate.width), plate.thickness),
  ],
});

export const plateFrequenciesWithShearMethod = woodAnswer({
  id: "plate-frequencies-with-shear",
  name: "frequencies of a free plate with shear through its thickness and rotary inertia",
  inputs: {
    ...thin,
    shearAlong,
    shearAcross,
    coefficient,
    modes: modesInput,
    polynomials: polynomialsInput(SHEAR_POLYNOMIALS, 20),
  },
  fields,
  source: sources.shearPlate,
  run: ({ modes, polynomials, shearAlong: lt, shearAcross: rt, coefficient: k, ...plate }) =>
    answered(plate, () =>
      plateModesWithShear(plate, { shearAlong: lt, shearAcross: rt, coefficient: k }, modes, polynomials),
    ),
  cautions: mixing,
});

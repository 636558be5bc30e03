import { declined, type MethodFields, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { shearCautions } from "../shear-cautions.ts";
import { sources } from "../sources.ts";
import { usualRanges } from "../usual-ranges.ts";
import { woodAnswer } from "../wood-answer.ts";
import { modulusField, type WoodInput } from "../wood-method.ts";
import { isMixed, mixingCautions } from "./mixing-cautions.ts";
import { plateInputs } from "./plate-inputs.ts";
import { plateModuli } from "./plate-moduli.ts";
import { poissonOfWood } from "./poisson-of-wood.ts";

const { length, width, thickness, density, poisson, shearAlong, shearAcross, coefficient } = plateInputs;
const optional = ({ default: _, ...input }: WoodInput): WoodInput => ({ ...input, optional: true });
const hertz = (meaning: string): WoodInput => ({ kind: "quantity", dimension: "Hz", above: 0, meaning });
const inputs = {
  length,
  width,
  long: hertz("frequency of the first bending along the grain"),
  cross: hertz("frequency of the first bending across the grain"),
  twist: optional(hertz("frequency of the twist")),
  thickness: optional(thickness),
  mass: optional({ kind: "quantity", dimension: "kg", above: 0, meaning: "mass of the plate; or give the density" }),
  density: optional(density),
  poisson: optional({ ...poisson, meaning: "Poisson ratio nu_LR, held fixed; left out, that of the wood" }),
  wood: {
    kind: "choice",
    choices: Object.keys(poissonOfWood),
    optional: true,
    meaning: "wood whose Poisson ratio is taken; sitka-spruce where neither is given",
  },
  shearAlong: optional({
    ...shearAlong,
    meaning: `${shearAlong.meaning}; with rolling shear given, both are corrected for`,
  }),
  shearAcross: optional(shearAcross),
  coefficient,
} as const satisfies Readonly<Record<string, WoodInput>>;
type Numbers = Readonly<Record<keyof typeof inputs, number>>;

/** Thickness, mass or density, and twist are needed for moduli: the first that is missing. */
function missing(numbers: Numbers): keyof typeof inputs | null {
  if (Number.isNaN(numbers.thickness)) return "thickness";
  if (Number.isNaN(numbers.mass) && Number.isNaN(numbers.density)) return "mass";
  if (Number.isNaN(numbers.twist)) return "twist";
  if (Number.isNaN(numbers.shearAlong) !== Number.isNaN(numbers.shearAcross))
    return Number.isNaN(numbers.shearAlong) ? "shearAlong" : "shearAcross";
  return null;
}

function poissonUsed({ poisson: given }: Numbers, { wood }: MethodInputs): readonly [value: number, whence: string] {
  if (!Number.isNaN(given)) return [given, `Poisson ratio nu_LR held at ${given}, as given; it is not measured here.`];
  const name = typeof wood === "string" ? wood : "sitka-spruce";
  const value = poissonOfWood[name] ?? 0.37;
  return [value, `Poisson ratio nu_LR held at ${value}, a table's for ${name}; it is not measured here.`];
}

function run(numbers: Numbers, given: MethodInputs): Outcome<MethodFields> {
  const { long, cross, twist, shearAlong: lt, shearAcross: rt, coefficient: k } = numbers;
  const known = {
    mixed: isMixed(long, cross),
    stripRatio: (long * numbers.length ** 2) / (cross * numbers.width ** 2),
  };
  if (known.stripRatio < 0.8)
    return declined("axes-swapped", {
      along: `${Number(long.toPrecision(4))} Hz along`,
      across: `${Number(cross.toPrecision(4))} Hz across`,
    });
  const lacking = missing(numbers);
  if (lacking)
    return known.mixed
      ? succeeded(known)
      : declined("input-missing", { name: lacking, meaning: inputs[lacking].meaning });
  const outline = numbers.length * numbers.width * numbers.thickness;
  const weight = Number.isNaN(numbers.mass) ? numbers.density : numbers.mass / outline;
  const [ratio, whence] = poissonUsed(numbers, given);
  const blank = {
    length: numbers.length,
    width: numbers.width,
    thickness: numbers.thickness,
    density: weight,
    poisson: ratio,
  };
  const through = Number.isNaN(lt) ? undefined : { shearAlong: lt, shearAcross: rt, coefficient: k };
  const found = plateModuli(blank, { long, cross, twist }, through);
  if (!found.ok) return found;
  const model = through
    ? "Shear through the thickness and rotary inertia are allowed for."
    : "Thin plate: shear through the thickness is left out.";
  return succeeded({ ...known, ...found.value, density: weight, poisson: ratio, chosen: `${whence} ${model}` });
}

export const plateModuliMethod = woodAnswer({
  id: "plate-moduli",
  name: "moduli of a free plate from its long, cross and twist frequencies",
  inputs,
  fields: {
    along: modulusField("Young's modulus along the grain, E_L"),
    across: modulusField("Young's modulus across the grain, E_R"),
    shear: { meaning: "shear modulus of the face, G_LR", dimension: "Pa" },
    density: { meaning: "density used", dimension: "kg/m3", usual: usualRanges.density },
    poisson: { meaning: "Poisson ratio nu_LR used", dimension: "1" },
    chosen: { meaning: "where the Poisson ratio comes from, and which model of the plate was used" },
    mixed: { meaning: "whether the two bending frequencies lie within 25 %, so that their names are not safe" },
    stripRatio: { meaning: "square root of E_L/E_R by strip formulas", dimension: "1" },
    steps: { meaning: "steps of Newton's method until no modulus moved by more than 1e-10 of itself" },
    lastStep: { meaning: "the last of them, as a share of the moduli" },
  },
  source: sources.plateInverse,
  run,
  cautions: ({ long, cross, length: a, width: b, thickness: h, shearAlong: lt }) => [
    ...mixingCautions(long, cross),
    ...(Number.isNaN(lt) ? shearCautions("The shorter side", Math.min(a, b), h) : []),
  ],
});

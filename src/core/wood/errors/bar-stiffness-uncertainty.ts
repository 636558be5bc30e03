import { declined, type InputSpec, type Method, succeeded } from "../../base/index.ts";
import { barYoungsModulus } from "../bar-youngs-modulus.ts";
import { shearCautions } from "../shear-cautions.ts";
import { usualCautions } from "../usual-cautions.ts";
import { usualRanges } from "../usual-ranges.ts";
import { BAR_EXPONENTS, powerLawUncertainty } from "./power-law-uncertainty.ts";

const UNITS = { mass: "kg", frequency: "Hz", length: "m", width: "m", thickness: "m" } as const;
type Name = keyof typeof UNITS;
const NAMES = Object.keys(UNITS) as readonly Name[];

const valueInput = (name: Name): InputSpec => ({ kind: "quantity", dimension: UNITS[name], meaning: name, above: 0 });
const errorInput = (name: Name): InputSpec => ({
  kind: "quantity",
  dimension: UNITS[name],
  meaning: `its standard uncertainty, in the unit of the ${name}`,
});

/** E of a free bar with its standard and expanded uncertainty, and which reading carries how much of it. */
export const barStiffnessUncertainty: Method = {
  id: "bar-stiffness-uncertainty",
  name: "Young's modulus of a free bar with its uncertainty",
  answers: "quantity",
  needs: {},
  inputs: Object.fromEntries(
    NAMES.flatMap((name) => [
      [name, valueInput(name)],
      [`${name}Uncertainty`, errorInput(name)],
    ]),
  ),
  fields: {
    youngsModulus: { meaning: "Young's modulus along the length", dimension: "Pa" },
    uncertainty: { meaning: "its standard uncertainty", dimension: "Pa" },
    expanded: { meaning: "expanded uncertainty, k = 2", dimension: "Pa" },
    relative: { meaning: "relative standard uncertainty", dimension: "1" },
    ...Object.fromEntries(
      NAMES.map((name) => [`${name}Share`, { meaning: `share of the ${name} in the variance`, dimension: "1" }]),
    ),
  },
  source: { citation: "JCGM 100:2008, 5.1.6; Euler–Bernoulli free bar", basis: "derived" },
  run: (inputs) => {
    const values = {} as Record<Name, number>;
    const relative = {} as Record<Name, number>;
    for (const name of NAMES) {
      const [value, error] = [inputs[name], inputs[`${name}Uncertainty`]];
      if (typeof value !== "number" || !(value > 0) || !Number.isFinite(value))
        return declined("out-of-domain", { name, needed: "a value above 0" });
      if (typeof error !== "number" || !Number.isFinite(error))
        return declined("out-of-domain", { name: `${name}Uncertainty`, needed: "a standard uncertainty" });
      if (error < 0) return declined("negative-uncertainty", { name });
      values[name] = value;
      relative[name] = error / value;
    }
    const { mass, length, width, thickness, frequency } = values;
    const modulus = barYoungsModulus(mass, length, width, thickness, frequency);
    const { standard, shares } = powerLawUncertainty(BAR_EXPONENTS.youngsModulus, relative);
    if (!Number.isFinite(modulus * standard)) return declined("not-finite", { name: "youngsModulus" });
    return succeeded({
      youngsModulus: modulus,
      uncertainty: modulus * standard,
      expanded: 2 * modulus * standard,
      relative: standard,
      ...Object.fromEntries(Object.keys(BAR_EXPONENTS.youngsModulus).map((name, i) => [`${name}Share`, shares[i]])),
    });
  },
  cautions: (inputs, fields) => [
    ...usualCautions({ youngsModulus: { dimension: "Pa", usual: usualRanges.modulus } }, fields),
    ...usualCautions({ relative: { usual: usualRanges.relativeUncertainty } }, fields),
    ...shearCautions("Length", Number(inputs.length), Number(inputs.thickness)),
  ],
};

import { describe, expect, it } from "vitest";
import { woodMethods } from "../../../src/core/wood/index.ts";

type Inputs = Readonly<Record<string, number>>;

/** The codes of the cautions that travel with an answer. */
function codes(id: string, inputs: Inputs): readonly string[] {
  const method = woodMethods.find((one) => one.id === id);
  const found = method?.run(inputs);
  if (!method || !found?.ok) throw new Error(`${id} declines`);
  return (method.cautions?.(inputs, found.value) ?? []).map(({ code }) => code);
}

const bar = { mass: 0.0421, length: 0.55, width: 0.05, thickness: 0.0034, frequency: 61.3 };
const names = ["mass", "length", "width", "thickness", "frequency"];
const surely = Object.fromEntries(names.map((name) => [`${name}Uncertainty`, 0]));
const plate = { length: 0.55, width: 0.205, density: 410, along: 11.2e9, across: 0.87e9, shear: 0.72e9 };

describe("values within what is usual travel without a caution", () => {
  it.each<[string, Inputs]>([
    ["sound-speed", { youngsModulus: 11e9, density: 410 }],
    ["sound-speed", { youngsModulus: 0.45e9, density: 160 }],
    ["flight-stiffness", { density: 425, length: 0.56, time: 107.2e-6 }],
    ["quality-from-bandwidth", { frequency: 69.3, bandwidth: 0.62 }],
    ["three-point-stiffness", { force: 4.9, deflection: 0.0019, span: 0.45, width: 0.2, thickness: 0.003 }],
    ["torsion-shear-modulus", { density: 400, frequency: 60, length: 0.55, width: 0.05, thickness: 0.0034 }],
    ["bending-shear-corrected", { apparent: 11e9, modulusRatio: 16, thickness: 0.018, span: 0.4 }],
    ["bar-stiffness-by-mode", { ...bar, mode: 1 }],
    ["plate-frequencies", { ...plate, thickness: 0.004 }],
    ["bar-stiffness-uncertainty", { ...bar, ...surely, thicknessUncertainty: 0.00003 }],
    ["plain-string-mass", { density: 7850, diameter: 0.00025 }],
    ["equilibrium-moisture", { temperature: 293.15, humidity: 0.45 }],
    ["bar-relative-uncertainty", { mass: 0.001, frequency: 0.003, length: 0.001, width: 0.002, thickness: 0.01 }],
  ])("%s %j", (id, inputs) => expect(codes(id, inputs)).toEqual([]));
});

describe("values that no wood has are answered with a caution", () => {
  it.each<[string, Inputs, string]>([
    ["sound-speed", { youngsModulus: 11e9, density: 8000 }, "unlikely-density"],
    ["density-at-moisture", { density: 4200, from: 0.08, to: 0.12 }, "unlikely-density"],
    ["density-from-basic-gravity", { basic: 1.9, moisture: 0.12 }, "unlikely-density"],
    ["flight-stiffness", { density: 425, length: 0.56, time: 107.2e-3 }, "unusual-size"],
    ["longitudinal-stiffness", { density: 410, length: 0.55, frequency: 48700 }, "unusual-size"],
    ["quality-from-decay", { frequency: 69, time: 0.002 }, "unusual-size"],
    ["moisture-content", { wetMass: 22, dryMass: 0.02 }, "unusual-size"],
    ["property-at-moisture", { at12: 10.8e9, green: 8.5e9, moisture: 0.01 }, "unusual-size"],
    ["property-at-moisture", { at12: 8e9, green: 10e9, moisture: 0.08 }, "unusual-size"],
    ["equilibrium-moisture", { temperature: 293.15, humidity: 0.999 }, "unusual-size"],
    ["air-sound-speed", { temperature: 341 }, "unusual-size"],
    ["tap-radiation-ratio", { mass: 0.184, length: 0.055, width: 0.205, frequency: 69 }, "unusual-size"],
    ["bar-shear-factor", { slenderness: 0.3, modulusRatio: 16 }, "unusual-size"],
    [
      "three-point-stiffness",
      { force: 50, deflection: 0.06, span: 0.45, width: 0.2, thickness: 0.003 },
      "large-deflection",
    ],
    [
      "cantilever-stiffness",
      { force: 1, deflection: 0.05, length: 0.3, width: 0.05, thickness: 0.003 },
      "large-deflection",
    ],
    [
      "torsion-shear-modulus",
      { density: 400, frequency: 165, length: 0.08, width: 0.05, thickness: 0.0034 },
      "shape-too-short",
    ],
    ["bending-shear-corrected", { apparent: 11e9, modulusRatio: 16, thickness: 0.018, span: 0.06 }, "shape-too-short"],
    [
      "three-point-relative-uncertainty",
      { force: 0, length: 0, width: 0, deflection: 0, thickness: 0.7 },
      "unusual-size",
    ],
    ["density-from-basic-gravity", { basic: 0.4, moisture: 0.4 }, "above-fibre-saturation"],
    ["shrunk-size", { size: 0.2, from: 0.6, to: 0.07, shrinkage: 0.04 }, "above-fibre-saturation"],
    ["bar-stiffness-by-mode", { ...bar, thickness: 0.03, mode: 2 }, "shear-left-out"],
    ["critical-aspect", { along: 0.8e9, across: 11e9 }, "axes-doubtful"],
    ["poisson-reciprocity", { along: 0.8e9, across: 11e9, poisson: 0.02 }, "axes-doubtful"],
    [
      "plate-frequencies",
      { ...plate, along: 0.87e9, across: 11.2e9, poisson: 0.03, thickness: 0.004 },
      "axes-doubtful",
    ],
    ["bar-stiffness-uncertainty", { ...bar, ...surely, thicknessUncertainty: 0.002 }, "unusual-size"],
    ["bar-stiffness-uncertainty", { ...bar, ...surely, thickness: 0.03 }, "shear-left-out"],
    ["plate-frequencies", { ...plate, thickness: 0.06 }, "shear-left-out"],
    ["simply-supported-frequency", { ...plate, thickness: 0.06 }, "shear-left-out"],
  ])("%s %j: %s", (id, inputs, code) => expect(codes(id, inputs)).toContain(code));

  it("once, where an argument and a field have one name", () =>
    expect(codes("density-at-moisture", { density: 4200, from: 0.08, to: 0.12 })).toEqual(["unlikely-density"]));

  it("a frequency above half the sample rate is in no spectrum", () => {
    const method = woodMethods.find((one) => one.id === "frequency-resolution");
    expect(method?.run({ sampleRate: 100, points: 1024, frequency: 51 }).ok).toBe(false);
    expect(method?.run({ sampleRate: 100, points: 1024, frequency: 50 }).ok).toBe(true);
  });
});

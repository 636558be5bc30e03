// Written measurements, units, notes, moisture and loss as a maker asks for them, by the method line.
import { describe, expect, it } from "vitest";
import { methodRun } from "../../src/cli/method-answer.ts";
import { methods } from "../../src/notebook/engine/index.ts";
import { closeTo } from "../support/close-to.ts";

const run = (id: string, inputs: Readonly<Record<string, unknown>>) => {
  const method = methods.find((each) => each.id === id);
  if (!method) throw new Error(`no method ${id}`);
  return methodRun(method, inputs);
};
const result = (id: string, inputs: Readonly<Record<string, unknown>>) => {
  const made = run(id, inputs);
  if ("refused" in made) throw new Error(made.refused.sentence);
  return made.result as Readonly<Record<string, unknown>>;
};
const refusal = (id: string, inputs: Readonly<Record<string, unknown>>) => {
  const made = run(id, inputs);
  return "refused" in made ? made.refused.code : made;
};
const cautions = (id: string, inputs: Readonly<Record<string, unknown>>) => {
  const made = run(id, inputs);
  return "refused" in made ? [] : (made.cautions ?? []).map(({ code }) => code);
};

describe("a written measurement", () => {
  // 1 in = 25.4 mm, 1 oz = 28.349523125 g, 1 psi = 6894.757293168 Pa, 1 lb/ft3 = 16.018463374 kg/m3: NIST SP 811 (2008), Appendix B.
  it.each([
    ["21-1/2 in", "mm", 546.1],
    ["1' 9 5/8\"", "mm", 549.275],
    ['5/64"', "mm", 1.984375],
    ["3 lb 2.5 oz", "g", 1431.65091781],
    ["1.6e6 psi", "GPa", 11.0316116691],
    ["28 lb/ft³", "kg/m3", 448.51697447],
    ["410 kg/m^3", "kg/m3", 410],
    ["12 %MC", "%MC", 12],
    ["65 %", "%", 65],
    ["1.250,5 g", "g", 1250.5],
    ["1 250 g", "kg", 1.25],
    ["0,125 in", "mm", 3.175],
    ["−3.5 mm", "mm", -3.5],
    ["20 °C", "degF", 68],
    ["1.6 Mpsi", "Mpsi", 1.6],
    ["90 thou", "mm", 2.286],
    ["12 lbf/in", "N/m", 2101.52202],
  ])("%s in %s is %d", (text, to, value) => {
    const found = result("measurement-in-text", { text, to });
    closeTo(found["value"] as number, value, 1e-8);
  });
  it.each([
    ["1,250 g", "amount-ambiguous"],
    ["12 oz/in", "wrong-dimension"],
    ["12", "unit-left-out"],
    ["3/0 in", "amount-unreadable"],
    ["12 bananas", "unit-unknown"],
    ["n/a", "amount-unreadable"],
    ["", "amount-unreadable"],
  ])("%s is declined: %s", (text, code) => expect(refusal("measurement-in-text", { text })).toBe(code));
  it("is declined where its column asks for another quantity", () =>
    expect(refusal("measurement-in-text", { text: "5 g", unit: "mm" })).toBe("wrong-dimension"));
  it("takes the answer to which mark is the decimal one", () => {
    expect(result("measurement-in-text", { text: "1,250 g", decimal: "comma" })["value"]).toBe(1.25);
    expect(result("measurement-in-text", { text: "1,250 g", decimal: "point" })["value"]).toBe(1250);
  });
  it("says that a point before three digits was taken for the decimal one", () => {
    expect(result("measurement-in-text", { text: "21.375 in" })["value"]).toBe(21.375);
    expect(cautions("measurement-in-text", { text: "21.375 in" })).toEqual(["point-may-group"]);
  });
  it("keeps what stands after ±", () =>
    closeTo(result("measurement-in-text", { text: "2.31 ± 0.02 mm" })["uncertainty"] as number, 0.02, 1e-12));
});

describe("units", () => {
  it.each([
    [20, "degC", "degF", 68],
    [-40, "degF", "degC", -40],
    [0, "degC", "K", 273.15],
    [12, "%MC", "1", 0.12],
    [4, "kgf", "lbf", 8.81849049],
    [1, "kg/m2", "oz/ft2", (0.3048 ** 2 / 0.45359237) * 16],
  ])("%d %s in %s is %d", (value, from, to, wanted) =>
    closeTo(result("unit-conversion", { value, from, to })["value"] as number, wanted, 1e-8),
  );
  it("has no offset in a difference of temperatures", () =>
    closeTo(
      result("unit-conversion", { value: 5, from: "degC", to: "degF", difference: true })["value"] as number,
      9,
      1e-12,
    ));
  it.each([
    [1, "kg", "N", "wrong-dimension"],
    [1, "cents", "%", "wrong-dimension"],
    [-300, "degC", "K", "out-of-domain"],
    [1, "mm", "furlong", "unit-unknown"],
    [1e308, "km", "um", "too-large"],
  ])("%d %s in %s is declined: %s", (value, from, to, code) =>
    expect(refusal("unit-conversion", { value, from, to })).toBe(code),
  );
});

describe("notes", () => {
  // ISO 16: A4 = 440 Hz; equal temperament. C4 is key 60.
  it.each([
    ["B#3", 440, 60, 261.6255653],
    ["Cb4", 440, 59, 246.9416506],
    ["A4", 415, 69, 415],
    ["E2", 415, 40, 77.7246796],
    ["A2", 442, 45, 110.5],
    ["C-1", 440, 0, 8.1757989],
  ])("%s at %d Hz is key %d", (note, concertPitch, midi, frequency) => {
    const found = result("note-frequency", { note, concertPitch: { value: concertPitch, unit: "Hz" } });
    expect(found["midi"]).toBe(midi);
    closeTo(found["frequency"] as number, frequency, 1e-8);
  });
  it.each(["H2", "G", "A2A", "110", ""])("%j is no note", (note) =>
    expect(refusal("note-frequency", { note })).toBe("out-of-domain"),
  );
  it("come back from their frequency", () => {
    for (const note of ["C2", "F#3", "A#4", "B5"]) {
      const { frequency } = result("note-frequency", { note, concertPitch: 415 });
      const back = result("note-of-frequency", { frequency, concertPitch: 415 });
      expect(back["note"]).toBe(note);
      expect(Math.abs(back["cents"] as number)).toBeLessThan(1e-9);
    }
  });
});

describe("what a maker is told", () => {
  const plate = {
    mass: { value: 182.4, unit: "g" },
    length: { value: 550, unit: "mm" },
    width: { value: 205, unit: "mm" },
  };
  it("of a density that no wood has", () => {
    expect(cautions("density", { ...plate, thickness: { value: 4.02, unit: "cm" } })).toEqual(["unlikely-density"]);
    expect(cautions("density", { ...plate, thickness: { value: 1, unit: "mm" } })).toEqual(["unlikely-density"]);
    expect(cautions("density", { ...plate, thickness: { value: 4.02, unit: "mm" } })).toEqual([]);
  });
  it("of readings of thickness that scatter", () => {
    const readings = { ...plate, thicknesses: { value: [3.8, 4.0, 4.2, null, 4.4], unit: "mm" } };
    expect(cautions("density-of-readings", readings)).toEqual(["thickness-scatters"]);
    expect(result("density-of-readings", readings)["readings"]).toBe(4);
  });
  it("of masses that may be swapped", () => {
    const made = run("moisture-content", { wetMass: { value: 22, unit: "g" }, dryMass: { value: 24.3, unit: "g" } });
    expect("refused" in made && made.refused.sentence).toMatch(/swapped/);
  });
  it("of a line narrower than the record can show", () => {
    const line = { frequency: 69.3, bandwidth: 0.62 };
    expect(cautions("quality-from-bandwidth", { ...line, recordLength: { value: 500, unit: "ms" } })).toEqual([
      "window-limited",
    ]);
    expect(cautions("quality-from-bandwidth", { ...line, recordLength: 2 })).toEqual([]);
    expect(cautions("quality-from-bandwidth", line)).toEqual([]);
  });
  it("of moisture where a property changes no more, and gets the green value", () => {
    const wet = { at12: 10.8e9, green: 8.5e9, moisture: { value: 32, unit: "%MC" } };
    expect(cautions("property-at-moisture", wet)).toEqual(["above-intersection"]);
    expect(result("property-at-moisture", wet)["property"]).toBe(8.5e9);
  });
  it("of moisture above fibre saturation", () =>
    expect(cautions("density-at-moisture", { density: 420, from: { value: 45, unit: "%" } })).toEqual([
      "above-fibre-saturation",
    ]));
  it("of percent given for a fraction", () =>
    expect(refusal("density-at-moisture", { density: 420, from: 12 })).toBe("out-of-domain"));
  it("of a name that is not an input", () => {
    const made = run("density", { ...plate, thicknes: 0.004 });
    expect("refused" in made && made.refused.sentence).toMatch(/thickness may be meant/);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amountInWords,
  numberInWords,
  pitchFromText,
  unitForDisplay,
  unitInWords,
} from "../../../src/core/units/index.ts";
import { law } from "../../support/law.ts";

describe("an amount in a sentence", () => {
  // Two significant digits of the uncertainty, as the GUM (JCGM 100:2008, 7.2.6) advises; one where the maker wrote one.
  it.each([
    [2.3141, 0.0213, "mm", "2.314 ± 0.021 mm"],
    [2.314, 0.02, "mm", "2.31 ± 0.02 mm"],
    [2.31, 0.213, "GPa", "2.31 ± 0.21 GPa"],
    [12340, 123, "kg/m3", "12340 ± 120 kg/m³"],
    [-0.0212, 0.0099, "mm/GPa", "−0.0212 ± 0.0099 mm/GPa"],
    [5, 0.0996, "mm", "5.00 ± 0.10 mm"],
    [1.23e-7, 2.2e-8, "m", "(1.23 ± 0.22) × 10⁻⁷ m"],
    [410.2338, null, "kg/m3", "410.2 kg/m³"],
    [45123, null, "g", "45123 g"],
    [12, null, "%", "12 %"],
    [30, 1, "deg", "30 ± 1°"],
    [0, null, "mm", "0 mm"],
    [3.2, null, "1", "3.2"],
  ] as const)("%d and %s %s is %s", (value, uncertainty, code, words) =>
    expect(amountInWords(value, uncertainty, code)).toBe(words),
  );
  it("never says minus zero", () => expect(numberInWords(-0.0001, 0.21)).toBe("0.00"));
  it("is shown with the marks of print, and read aloud in words", () => {
    expect(unitForDisplay("[lb_av]/[ft_i]3")).toBe("lb/ft³");
    expect(unitForDisplay("m4/(kg.s)")).toBe("m⁴/(kg·s)");
    expect(unitForDisplay("Cel")).toBe("°C");
    expect(unitForDisplay("1")).toBe("");
    expect(unitInWords("kg/m3")).toBe("kilograms per cubic metre");
    expect(unitInWords("N.m")).toBe("newton metres");
    expect(unitInWords("mm/GPa")).toBe("millimetres per gigapascal");
  });
});
law(
  "the number said is within half of its last digit of the number meant",
  [fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.double({ min: 1e-3, max: 1e5, noNaN: true })],
  (value, uncertainty) => {
    const said = numberInWords(value, uncertainty);
    if (!said.includes("×"))
      expect(Math.abs(Number(said.replace("−", "-")) - value)).toBeLessThanOrEqual(uncertainty * 0.5001);
  },
);

describe("a written pitch", () => {
  it.each([
    ["G#2", "G#2"],
    ["g#2", "G#2"],
    ["G♯2", "G#2"],
    ["Ab3 +12c", "Ab3 +12c"],
    ["A2 -10 cents", "A2 -10c"],
    ["A2 −10c", "A2 -10c"],
    ["A2 +0c", "A2"],
    ["B flat2", "Bb2"],
  ])("%s is %s", (text, canonical) => expect(pitchFromText(text)?.text).toBe(canonical));
  it.each(["H2", "G#", "G##2", "110", "G#2/A2", "A2 10c", ""])("%j is none", (text) =>
    expect(pitchFromText(text)).toBeNull(),
  );
  it("changes its octave number at C", () =>
    expect(pitchFromText("B#3")?.frequency).toBe(pitchFromText("C4")?.frequency));
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sameDimension, unitCatalogue, unitFromCode, unitFromText } from "../../../src/core/units/index.ts";
import { law } from "../../support/law.ts";

/** What is written in the trade, and its UCUM code. Codes: Unified Code for Units of Measure, table of units. */
const WRITTEN: Record<string, string> = {
  mm: "mm",
  millimetre: "mm",
  millimeters: "mm",
  MILLIMETRES: "mm",
  cm: "cm",
  µm: "um",
  μm: "um",
  in: "[in_i]",
  "in.": "[in_i]",
  inch: "[in_i]",
  Inches: "[in_i]",
  '"': "[in_i]",
  "″": "[in_i]",
  ft: "[ft_i]",
  foot: "[ft_i]",
  feet: "[ft_i]",
  thou: "[mil_i]",
  mils: "[mil_i]",
  oz: "[oz_av]",
  lbs: "[lb_av]",
  gr: "g",
  "g/cm³": "g/cm3",
  "g/cc": "g/cm3",
  "kg/m³": "kg/m3",
  "kg/m^3": "kg/m3",
  "kg / m3": "kg/m3",
  "lb/ft³": "[lb_av]/[ft_i]3",
  "lbs/ft3": "[lb_av]/[ft_i]3",
  pcf: "[lb_av]/[ft_i]3",
  "[lb_av]/[ft_i]3": "[lb_av]/[ft_i]3",
  "kg/m²": "kg/m2",
  "N/mm²": "N/mm2",
  "N/mm^2": "N/mm2",
  "kp/cm²": "kgf/cm2",
  psi: "[psi]",
  Mpsi: "M[psi]",
  lbf: "[lbf_av]",
  N·m: "N.m",
  "N m": "N.m",
  "N m²": "N.m2",
  "N.m2": "N.m2",
  "N*m": "N.m",
  "m4/(kg.s)": "m4/(kg.s)",
  "m4/(kg s)": "m4/(kg.s)",
  "m4 kg-1 s-1": "m4.kg-1.s-1",
  ct: "{cent}",
  cents: "{cent}",
  "%": "%",
  pct: "%",
  percent: "%",
  "%MC": "%MC",
  "°C": "Cel",
  "°F": "[degF]",
  K: "K",
  "°": "deg",
  degrees: "deg",
  arcmin: "'",
  dB: "dB",
  "m/s": "m/s",
  "µm/m": "um/m",
  h: "h",
  days: "d",
};

describe("a unit as the maker writes it", () => {
  it.each(Object.entries(WRITTEN))("%s is %s", (text, code) => expect(unitFromText(text)?.code).toBe(code));
  it.each([
    "",
    " ",
    "1",
    "1/1",
    "zorks",
    "M",
    "MM",
    "Kg",
    "mm/",
    "/mm",
    "kg//m",
    "mm)",
    "(mm",
    "kg/m33",
    "mm^",
    "5 mm",
    "L ength",
    "x".repeat(200),
  ])("%j is no unit", (text) => expect(unitFromText(text)).toBeNull());
  it("has one meaning for every spelling", () => {
    const spellings = unitCatalogue.flatMap((record) => record.spellings);
    expect(spellings.filter((spelling, index) => spellings.indexOf(spelling) !== index)).toEqual([]);
  });
  it("has one record for every code", () =>
    expect(new Set(unitCatalogue.map((record) => record.code)).size).toBe(unitCatalogue.length));
});

const code = fc.constantFrom(...unitCatalogue.map((record) => record.code).filter((one) => one !== "1"));
const exponent = fc.constantFrom("", "2", "3", "-1", "4");
const factor = fc.tuple(code, exponent).map((parts) => parts.join(""));
const compound = fc
  .tuple(factor, fc.array(fc.tuple(fc.constantFrom(".", "/"), factor), { maxLength: 2 }))
  .map(([first, rest]) => first + rest.map((pair) => pair.join("")).join(""));

law("a canonical code is its own spelling", [compound], (text) => {
  const unit = unitFromCode(text);
  expect(unit.code).toBe(text);
  expect(sameDimension(unitFromText(text)?.dimension ?? { length: [9, 1] }, unit.dimension)).toBe(true);
});
law(
  "any text gives a unit whose code is known, or none, and never throws",
  [
    fc.oneof(
      fc.string({ maxLength: 70 }),
      fc.string({ unit: fc.constantFrom(..."mkgN/.()^23- %°·²[]_in"), maxLength: 20 }),
    ),
  ],
  (text) => {
    const unit = unitFromText(text);
    if (unit) expect(unitFromCode(unit.code).factor).toBe(unit.factor);
  },
  1000,
);

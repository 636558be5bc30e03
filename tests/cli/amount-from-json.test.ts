// How the method line reads amounts: every unit that the physics reference names, written numbers, temperatures, and what is declined.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inputFromJson } from "../../src/cli/input-from-json.ts";
import type { InputSpec } from "../../src/core/base/index.ts";
import { unitFromText } from "../../src/core/units/index.ts";
import { closeTo } from "../support/close-to.ts";

const spec = (dimension?: string, more: Partial<InputSpec> = {}): InputSpec => ({
  kind: "quantity",
  meaning: "something measured",
  ...(dimension === undefined ? {} : { dimension }),
  ...more,
});
const read = (value: unknown, dimension?: string, more: Partial<InputSpec> = {}) =>
  inputFromJson("size", value, spec(dimension, more));
const number = (value: unknown, dimension?: string, more: Partial<InputSpec> = {}) => {
  const input = read(value, dimension, more);
  return input.ok ? (input.value as number) : input.refusal.code;
};
const code = (value: unknown, dimension?: string, more: Partial<InputSpec> = {}) => {
  const input = read(value, dimension, more);
  return input.ok ? input.value : input.refusal.code;
};

// SI units in one of it: NIST SP 811 (2008), Appendix B, and the exact definitions 1 in = 25.4 mm, 1 lb = 0.45359237 kg, g = 9.80665 m/s2.
const [inch, foot, lb, g] = [0.0254, 0.3048, 0.45359237, 9.80665];
const FACTORS: Readonly<Record<string, readonly [factor: number, dimension: string]>> = {
  "%": [0.01, "1"],
  "% of green": [0.01, "1"],
  "%MC": [0.01, "%MC"],
  m: [1, "m"],
  mm: [1e-3, "m"],
  cm: [1e-2, "m"],
  um: [1e-6, "m"],
  in: [inch, "m"],
  thou: [inch / 1000, "m"],
  ft: [foot, "m"],
  kg: [1, "kg"],
  g: [1e-3, "kg"],
  oz: [lb / 16, "kg"],
  lb: [lb, "kg"],
  "kg/m3": [1, "kg/m3"],
  "g/cm3": [1000, "kg/m3"],
  "lb/ft3": [lb / foot ** 3, "kg/m3"],
  "lb/in3": [lb / inch ** 3, "kg/m3"],
  Pa: [1, "Pa"],
  MPa: [1e6, "Pa"],
  GPa: [1e9, "Pa"],
  psi: [(lb * g) / inch ** 2, "Pa"],
  Mpsi: [(1e6 * lb * g) / inch ** 2, "Pa"],
  N: [1, "N"],
  lbf: [lb * g, "N"],
  kgf: [g, "N"],
  gf: [g / 1000, "N"],
  "N/m": [1, "N/m"],
  "lbf/in": [(lb * g) / inch, "N/m"],
  "kg/m2": [1, "kg/m2"],
  "g/m2": [1e-3, "kg/m2"],
  "oz/ft2": [lb / 16 / foot ** 2, "kg/m2"],
  Hz: [1, "Hz"],
  kHz: [1000, "Hz"],
  "m/s": [1, "m/s"],
  "m2/s2": [1, "m2/s2"],
  "m4/(kg s)": [1, "m4/(kg.s)"],
  "kg/(m2 s)": [1, "kg/(m2.s)"],
  "N m": [1, "N.m"],
  "lbf in": [lb * g * inch, "N.m"],
  s: [1, "s"],
  ms: [1e-3, "s"],
  us: [1e-6, "s"],
  cents: [1, "{cent}"],
  "kg/m": [1, "kg/m"],
  "g/m": [1e-3, "kg/m"],
  "lb/in": [lb / inch, "kg/m"],
  L: [1e-3, "m3"],
  "dB/s": [1, "dB/s"],
  "rad/m": [1, "rad/m"],
};

describe("units", () => {
  it.each(Object.entries(FACTORS))("reads %s", (unit, [factor, dimension]) =>
    closeTo(number({ value: 3, unit }, dimension) as number, 3 * factor, 1e-12),
  );
  it("has a factor in this table for every unit of the physics cases but temperatures and what is no unit", () => {
    const text = readFileSync(new URL("../reference/physics/checks.json", import.meta.url), "utf8");
    const found = new Set([...text.matchAll(/"unit": "([^"]+)"/g)].map((match) => match[1] ?? ""));
    for (const plain of ["1", "text", "note", "column", "csv", "flag", "refuse|caution", "degC"]) found.delete(plain);
    expect([...found].filter((unit) => !(unit in FACTORS))).toEqual([]);
    expect([...found].filter((unit) => unitFromText(unit) === null)).toEqual([]);
  });
  // ASTM D4442: moisture content is percent of oven-dry mass, however short it is written.
  it("takes percent as percent of oven-dry mass where moisture is asked for", () =>
    expect(number({ value: 12, unit: "%" }, "%MC")).toBe(0.12));
  it("takes a bare number for a fraction of oven-dry mass, as coherent SI has it", () =>
    expect(number(0.12, "%MC")).toBe(0.12));
  it("takes a bare number for kelvin and metres", () => {
    expect(number(293.15, "K")).toBe(293.15);
    expect(number(0.55, "m")).toBe(0.55);
  });
  it("takes no moisture for a plain ratio", () =>
    expect(code({ value: 12, unit: "%MC" }, "1")).toBe("wrong-dimension"));
});

describe("temperatures", () => {
  it("reads degrees on a scale", () => {
    closeTo(number({ value: 20, unit: "degC" }, "K") as number, 293.15, 1e-14);
    closeTo(number({ value: 68, unit: "degF" }, "K") as number, 293.15, 1e-14);
  });
  it("reads degrees of a difference", () => {
    expect(number({ value: 5, unit: "degC" }, "K", { difference: true })).toBe(5);
    closeTo(number({ value: 9, unit: "degF" }, "K", { difference: true }) as number, 5, 1e-14);
  });
});

describe("written numbers", () => {
  it.each([
    [{ value: "21 1/2", unit: "in" }, 21.5 * inch],
    [{ value: "8 1/16", unit: "in" }, 8.0625 * inch],
    [{ value: "19-11/16", unit: "in" }, 19.6875 * inch],
    [{ value: "7½", unit: "in" }, 7.5 * inch],
    [{ value: "7 1/2 in" }, 7.5 * inch],
    [{ value: "3/32 in", unit: "in" }, (3 / 32) * inch],
    ["7 1/2 in", 7.5 * inch],
    ["1' 9 5/8\"", 21.625 * inch],
    [{ value: "3,4", unit: "mm" }, 0.0034],
    [{ value: " 3.4 ", unit: "mm" }, 0.0034],
    [{ value: "1.25e3", unit: "um" }, 0.00125],
    ["90 thou", 0.09 * inch],
  ])("reads %j", (value, metres) => closeTo(number(value, "m") as number, metres, 1e-12));
  it("reads a pressure in a text", () =>
    closeTo(number("1.6e6 psi", "Pa") as number, (1.6e6 * lb * g) / inch ** 2, 1e-12));
  it("reads a fraction of an ounce, for the unit stands beside it", () =>
    closeTo(number({ value: "6 1/4", unit: "oz" }, "kg") as number, (6.25 * lb) / 16, 1e-12));
});

describe("lists", () => {
  const list = (value: unknown, dimension?: string) => code(value, dimension, { kind: "quantities" });
  it("takes one unit for all", () => expect(list({ value: [1, 2], unit: "mm" }, "m")).toEqual([0.001, 0.002]));
  it("takes items of differing units and texts", () => {
    const found = list([{ value: 25.4, unit: "mm" }, { value: 1, unit: "in" }, "1 in", 0.0254], "m") as number[];
    for (const each of found) closeTo(each, 0.0254, 1e-14);
  });
  it("keeps a place for what is missing", () => expect(list([1, null, 3], "m")).toEqual([1, Number.NaN, 3]));
  it("names the item of another dimension", () => {
    const input = read(
      [
        { value: 1, unit: "mm" },
        { value: 1, unit: "g" },
      ],
      undefined,
      { kind: "quantities" },
    );
    expect(input).toMatchObject({ ok: false, refusal: { code: "wrong-dimension", facts: { name: "size, item 2" } } });
  });
});

describe("what is declined", () => {
  it.each([
    [{ value: 1, unit: "furlong" }, "unit-unknown"],
    [{ value: 1, unit: "" }, "unit-unknown"],
    [{ value: 1, unit: 7 }, "wrong-kind"],
    [{ value: 1, unit: "g" }, "wrong-dimension"],
    [{ value: 1, unit: "1" }, "wrong-dimension"],
    [{ value: "12 oz/in" }, "wrong-dimension"],
    [{ value: 1 }, "unit-left-out"],
    [{ value: "3 1/2" }, "unit-left-out"],
    ["2.4", "unit-left-out"],
    [{ value: 1, units: "mm" }, "input-unknown"],
    [{ value: "3 in", unit: "mm" }, "units-differ"],
    [{ value: "3/0", unit: "in" }, "amount-unreadable"],
    [{ value: "1/3", unit: "in" }, "amount-unreadable"],
    [{ value: "--5", unit: "mm" }, "amount-unreadable"],
    [{ value: "<5", unit: "mm" }, "amount-unreadable"],
    [{ value: "", unit: "mm" }, "amount-unreadable"],
    [{ value: "NaN", unit: "mm" }, "amount-unreadable"],
    [{ value: "1,250", unit: "mm" }, "amount-ambiguous"],
    [{ value: 1e308, unit: "km" }, "too-large"],
    [Number.POSITIVE_INFINITY, "too-large"],
    [{ value: null, unit: "mm" }, "wrong-kind"],
    [{ value: { value: 1 }, unit: "mm" }, "wrong-kind"],
    [{}, "wrong-kind"],
    [[1], "wrong-kind"],
    [true, "wrong-kind"],
    [{ value: "x".repeat(5000), unit: "mm" }, "amount-unreadable"],
  ])("declines %j as %s", (value, refusal) => expect(code(value, "m")).toBe(refusal));
});

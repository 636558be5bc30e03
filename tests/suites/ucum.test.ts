// The functional tests of UCUM, from the folder that THUMBRULE_SUITES names; without it these are skipped, and say so.
// Codes of medicine and of special scales that we do not carry are refused, never misread; they are counted apart.
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type Unit, unitFromCode, unitFromText } from "../../src/core/units/index.ts";

const folder = process.env.THUMBRULE_SUITES ?? "";
const path = join(folder, "ucum/functional-tests.json");
const isHere = folder !== "" && existsSync(path);
type Suite = {
  readonly validation: readonly { id: string; unit: string; valid: string; reason?: string }[];
  readonly conversion: readonly { id: string; value: string; srcUnit: string; dstUnit: string; outcome: string }[];
  readonly multiplication: readonly Product[];
  readonly division: readonly Product[];
};
type Product = { id: string; v1: string; u1: string; v2: string; u2: string; vRes: string; uRes: string };
const none: Suite = { validation: [], conversion: [], multiplication: [], division: [] };
const cases: Suite = isHere ? JSON.parse(readFileSync(path, "utf8")) : none;

function known(code: string): Unit | null {
  try {
    return unitFromCode(code === "" ? "1" : code);
  } catch {
    return null;
  }
}

/** Within 1e-9, or within what the digits of the outcome can say. */
function agrees(found: number, outcome: string): boolean {
  const digits = outcome.replace(/e.*$/i, "").replace(/[-.]/g, "").replace(/^0+/, "").length;
  return Math.abs(found - Number(outcome)) <= Math.max(1e-9, 5 * 10 ** -digits) * Math.abs(Number(outcome));
}

(isHere ? describe : describe.skip)(isHere ? "ucum" : "ucum: not here, set THUMBRULE_SUITES", () => {
  it("takes no code that is none, written by a program or by a maker", () => {
    const wrong = cases.validation.filter(({ valid }) => valid === "false");
    expect(wrong.filter(({ unit }) => known(unit) !== null || unitFromText(unit) !== null)).toEqual([]);
    expect(wrong.length).toBeGreaterThan(30);
  });

  it("knows a code alike whether a program or a maker writes it", () => {
    // "/m" and numbers alone are codes of a program's making; a maker who writes them means no unit.
    const right = cases.validation.filter(
      ({ valid, unit }) => valid === "true" && !/^(?:\/.*|[\d./]*)$/.test(unit) && known(unit) !== null,
    );
    expect(right.filter(({ unit }) => unitFromText(unit)?.factor !== known(unit)?.factor)).toEqual([]);
    expect(right.length).toBeGreaterThan(150);
  });

  it("converts as the suite says wherever it knows both units", () => {
    const both = cases.conversion.filter(({ srcUnit, dstUnit }) => known(srcUnit) && known(dstUnit));
    const wrong = both.filter(
      ({ value, srcUnit, dstUnit, outcome }) =>
        !agrees((Number(value) * (known(srcUnit)?.factor ?? 0)) / (known(dstUnit)?.factor ?? 0), outcome),
    );
    expect(wrong).toEqual([]);
    expect(both.length).toBeGreaterThanOrEqual(18);
  });

  it.each([
    ...cases.multiplication.map((each) => ["times", each] as const),
    ...cases.division.map((each) => ["by", each] as const),
  ])("multiplies and divides: %s %o", (sort, { v1, u1, v2, u2, vRes, uRes }) => {
    const [a, b, c] = [u1, u2, uRes].map((unit) => known(unit)?.factor ?? Number.NaN) as [number, number, number];
    const first = Number(v1) * a;
    const second = Number(v2) * b;
    expect(agrees((sort === "times" ? first * second : first / second) / c, vRes)).toBe(true);
  });
});

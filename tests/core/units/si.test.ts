import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromSi, scaleFactor, toSi, unitCatalogue, unitFromCode } from "../../../src/core/units/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

describe("SI conversion", () => {
  // Exact by definition: NIST SP 811, Appendix B.
  it.each([
    ["[in_i]", 0.0254],
    ["[ft_i]", 0.3048],
    ["[mil_i]", 2.54e-5],
    ["[lb_av]", 0.45359237],
    ["[oz_av]", 0.028349523125],
    ["kgf", 9.80665],
    ["[lbf_av]", 4.4482216152605],
    ["g/cm3", 1000],
    ["mm3", 1e-9],
    ["N/mm2", 1e6],
    ["%", 0.01],
    ["min", 60],
  ] as const)("one %s is exactly %d", (code, factor) => expect(scaleFactor(code)).toBe(factor));
  it("gives the derived factors of pressure and density", () => {
    // NIST SP 811: 1 psi = 6894.757 Pa, 1 lb/ft3 = 16.01846 kg/m3
    closeTo(scaleFactor("[psi]"), 6894.757293168361, 1e-15);
    closeTo(scaleFactor("[lb_av]/[ft_i]3"), 16.018463373960142, 1e-15);
  });
  it("reads a temperature on its scale, and a difference without it", () => {
    expect(toSi(20, unitFromCode("Cel"))).toBe(293.15);
    closeTo(toSi(68, unitFromCode("[degF]")), 293.15, 1e-14);
    closeTo(fromSi(273.15, unitFromCode("[degF]")), 32, 1e-12);
    expect(unitFromCode("mm/Cel").offset).toBe(0);
    expect(scaleFactor("Cel")).toBe(1);
  });
  it("keeps a plain decimal plain: 2.4 mm is 0.0024 m", () => expect(toSi(2.4, unitFromCode("mm"))).toBe(0.0024));
  it("throws our own fault for a code that is none", () => expect(() => unitFromCode("zorks")).toThrow("zorks"));
});
law(
  "there and back is the same number",
  [fc.constantFrom(...unitCatalogue), fc.double({ min: 0.001, max: 1e6, noNaN: true })],
  (record, value) => {
    const unit = unitFromCode(record.code);
    closeTo(fromSi(toSi(value, unit), unit), value, 1e-14, { scale: Math.max(value, Math.abs(unit.offset * 2)) });
  },
);

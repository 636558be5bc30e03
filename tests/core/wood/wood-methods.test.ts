import { describe, expect, it } from "vitest";
import { unitFromText } from "../../../src/core/units/index.ts";
import {
  barYoungsModulus,
  basicFromSpecificGravity,
  propertyAt12,
  propertyAtMoisture,
  specificGravityFromBasic,
  twoPistonInverse,
  woodMethods,
} from "../../../src/core/wood/index.ts";
import { closeTo } from "../../support/close-to.ts";

describe("the catalogue of wood physics", () => {
  it("has no id twice", () => expect(new Set(woodMethods.map((method) => method.id)).size).toBe(woodMethods.length));
  it("names a known unit for every argument and field", () => {
    for (const method of woodMethods)
      for (const { dimension } of [...Object.values(method.inputs), ...Object.values(method.fields)])
        if (dimension !== undefined && dimension !== "1")
          expect(unitFromText(dimension)?.factor, `${method.id}: ${dimension}`).toBeGreaterThan(0);
  });
  it("refuses what is not a number by the argument's name", () => {
    for (const method of woodMethods) {
      const first = Object.entries(method.inputs).find(([, spec]) => !spec.optional);
      const outcome = method.run({});
      expect(outcome.ok).toBe(false);
      if (!outcome.ok) expect(JSON.stringify(outcome.refusal.facts)).toContain(first?.[0]);
    }
  });
  it("refuses a wet mass below the dry one", () => {
    const method = woodMethods.find((one) => one.id === "moisture-content");
    expect(method?.run({ wetMass: 0.022, dryMass: 0.0243 }).ok).toBe(false);
  });
  it("gives the fields its record names", () => {
    const density = woodMethods.find((one) => one.id === "density");
    expect(density?.run({ mass: 1, length: 1, width: 1, thickness: 1 })).toEqual({ ok: true, value: { density: 1 } });
  });
});

describe("wood physics", () => {
  it("lets an error of thickness enter the modulus cubed", () =>
    closeTo(barYoungsModulus(1, 1, 1, 0.99, 1) / barYoungsModulus(1, 1, 1, 1, 1), 0.99 ** -3, 1e-12));
  it("comes back from basic specific gravity and forth", () =>
    closeTo(basicFromSpecificGravity(specificGravityFromBasic(0.37, 0.08), 0.08), 0.37, 1e-12));
  it("comes back to 12 % from another moisture", () => {
    // Wood physics reference, case O02-021: P 11.5 GPa, ratio 1.27, M 7.5 %, Mp 25 % -> 10.5868262 GPa (computed by a program that shares nothing with this one)
    closeTo(propertyAt12(11.5, 1.27, 0.075, 0.25), 10.5868262, 1e-7);
    closeTo(propertyAt12(propertyAtMoisture(10.8, 8.5, 0.08), 10.8 / 8.5, 0.08), 10.8, 1e-12);
  });
  it("keeps the green value above the moisture where it stops changing", () =>
    expect(propertyAtMoisture(10.8, 8.5, 0.32)).toBe(8.5));
  it("finds plate and coupling back from the peaks", () => {
    // Case O06-027: f- 98, f+ 202, fA 122 -> fP 188.478115, fAP 108.160137 Hz
    const { plate, coupling } = twoPistonInverse(98, 202, 122);
    closeTo(plate, 188.478115, 1e-7);
    closeTo(coupling, 108.160137, 1e-7);
  });
});

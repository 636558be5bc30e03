import { describe, expect, it } from "vitest";
import { scaleErrorEffect } from "../../../../src/core/wood/errors/common-scale-error.ts";
import { errorMethods } from "../../../../src/core/wood/errors/error-methods.ts";
import { powerLawUncertainty } from "../../../../src/core/wood/errors/power-law-uncertainty.ts";
import { closeTo } from "../../../support/close-to.ts";

const run = (id: string, inputs: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> => {
  const made = errorMethods.find((each) => each.id === id)?.run(inputs);
  return made?.ok ? made.value : { refused: made?.ok === false ? made.refusal : null };
};

describe("errors of what a bar gives", () => {
  it("the example of powerLawUncertainty", () =>
    closeTo(powerLawUncertainty({ f: 2, h: -3 }, { f: 0.003, h: 0.01 }).standard, Math.hypot(0.006, 0.03), 1e-12));
  it("one calliper: three powers of length and less of the others leave E as 1/g, found by measuring a bar twice", () => {
    const modulus = (L: number, b: number, h: number) => L ** 3 / (b * h ** 3);
    const [g, L, b, h] = [0.004, 0.55, 0.05, 0.0034];
    const change = modulus(L * (1 + g), b * (1 + g), h * (1 + g)) / modulus(L, b, h) - 1;
    closeTo(
      scaleErrorEffect(g, { length: 3, width: -1, thickness: -3 }, ["length", "width", "thickness"]),
      change,
      1e-10,
    );
  });
  it("limits: 0.05 mm of resolution is 0.014 mm (printed)", () =>
    closeTo(Number(run("uncertainty-from-limits", { halfWidth: 0.025 }).standard), 0.0144, 3e-3));
  it("refuse a negative uncertainty by name", () =>
    expect(
      run("bar-relative-uncertainty", { mass: 0.1, frequency: 0.1, length: -0.1, width: 0.1, thickness: 0.1 }).refused,
    ).toEqual({
      code: "negative-uncertainty",
      facts: { name: "length" },
    }));
});

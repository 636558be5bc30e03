// Thick bars and the exponents of thickness rules against other ways to the same number.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  barFrequency,
  barShearFactor,
  freeBarRoot,
  ruleExponent,
  timoshenkoBarFrequencies,
} from "../../../src/core/wood/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Huang's frequency equation of the free bar as printed (J. Appl. Mech. 28 (1961) 579-584), even and odd shapes together. */
function huang(b: number, r2: number, s2: number): number {
  const inner = Math.sqrt((r2 - s2) ** 2 + 4 / b ** 2);
  const [alpha, beta] = [Math.sqrt((inner - r2 - s2) / 2), Math.sqrt((inner + r2 + s2) / 2)];
  const factor = (b / Math.sqrt(1 - b * b * r2 * s2)) * (b * b * r2 * (r2 - s2) ** 2 + (3 * r2 - s2));
  return 2 - 2 * Math.cosh(b * alpha) * Math.cos(b * beta) + factor * Math.sinh(b * alpha) * Math.sin(b * beta);
}

describe("a free bar with shear and rotary inertia", () => {
  law(
    "solves the frequency equation for even and odd shapes at once",
    [between(0.01, 0.12), between(2, 25)],
    (slenderness, ratio) => {
      const r2 = slenderness ** 2 / 12;
      const s2 = (r2 * ratio) / (5 / 6);
      const scale = Math.sqrt(r2) / (2 * Math.PI);
      for (const frequency of timoshenkoBarFrequencies(ratio, 1, ratio, 1, slenderness, 3)) {
        const b = frequency / scale;
        const [below, above] = [huang(b * (1 - 1e-9), r2, s2), huang(b * (1 + 1e-9), r2, s2)];
        expect(below > 0).not.toBe(above > 0);
      }
    },
    50,
  );
  it("is a thin bar where it is thin, in every mode", () => {
    timoshenkoBarFrequencies(11e9, 0.7e9, 400, 10, 0.001, 8).forEach((frequency, at) => {
      closeTo(frequency, barFrequency(11e9, 400, 10, 0.001, at + 1), 1e-4);
    });
  });
  law(
    "agrees with the first-order factor to its third of a per cent",
    [between(0.005, 0.05), between(2.6, 22)],
    (slenderness, ratio) => {
      const [lowest = 0] = timoshenkoBarFrequencies(ratio, 1, 1, 1, slenderness, 1);
      closeTo((barFrequency(ratio, 1, 1, slenderness) / lowest) ** 2, barShearFactor(slenderness, ratio), 3e-3);
    },
  );
  it("leaves out modes above the shear of its own section", () =>
    expect(timoshenkoBarFrequencies(16, 1, 1, 1, 0.5, 20).length).toBeLessThan(20));
  it("has the roots of cos x cosh x = 1", () => {
    for (const mode of [1, 2, 3, 4, 7, 12])
      closeTo(Math.cos(freeBarRoot(mode)), 1 / Math.cosh(freeBarRoot(mode)), 1e-12, { scale: 1 });
    closeTo(freeBarRoot(4), 14.1371654913, 1e-11); // Rayleigh, The Theory of Sound, vol. 1, section 174: 14.1371655
  });
});

describe("the slope that a rule asks for", () => {
  it.each([
    ["equal stiffness", "E", "h", -1 / 3],
    ["equal bending stiffness", "E", "areal mass", -1 / 3],
    ["equal stiffness", "rho", "rho h", 1],
    ["equal areal mass", "rho", "h", -1],
    ["equal areal mass", "E", "h", 0],
    ["equal frequency", "E", "h", -1 / 2],
    ["equal frequency", "rho", "h", 1 / 2],
    ["equal frequency", "R", "rho h", -1],
    ["equal deflection", "E", "h", -1 / 3],
  ] as const)("%s: %s against %s", (rule, x, y, slope) =>
    closeTo(ruleExponent(rule, x, y) ?? Number.NaN, slope, 1e-12, { scale: 1 }),
  );
  it("is none where x stands still", () => expect(ruleExponent("equal areal mass", "rho h", "h")).toBeNull());
});

// Lowest bending frequency of a free strip bent across the grain, 217 by 4.8 mm, 410 kg/m3, by plane elasticity with no assumption on the section: Ritz on
// 22 by 7 Legendre products for both displacements, E_T 0.45 GPa, nu_RT 0.3. It tells whether a soft core of rolling shear asks for another
// coefficient than 5/6: it does not, and elements that carry shear evenly over a layer (k = 1) are the ones that are off.
describe("the shear coefficient 5/6 for wood that is soft in rolling shear", () => {
  it.each([
    [0.87e9, 35e6, 151.3604],
    [0.87e9, 20e6, 150.5339],
    [0.87e9, 10e6, 148.6575],
    [0.9e9, 8e6, 150.1129],
  ])("E_R %d Pa, G_RT %d Pa: %d Hz", (across, rolling, exact) => {
    const lowest = (coefficient: number) =>
      timoshenkoBarFrequencies(across, rolling, 410, 0.217, 0.0048, 1, coefficient)[0] ?? Number.NaN;
    closeTo(lowest(5 / 6), exact, 1.5e-4);
    expect(lowest(1) / exact - 1).toBeGreaterThan(1e-3);
  });
});

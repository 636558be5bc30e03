// Columns computed from one measurement: what its error alone, and arithmetic alone, would show, against K. Pearson's closed forms (1897).
import { describe, expect, it } from "vitest";
import type { Answer } from "../../../src/core/base/index.ts";
import type { QuantityColumn } from "../../../src/core/columns/index.ts";
import { generatorFromSeed, normalQuantile } from "../../../src/core/numerics/index.ts";
import { sharedMeasurementNull } from "../../../src/core/questions/errors/shared-measurement-null.ts";
import { answerRelation } from "../../../src/core/questions/index.ts";
import { quantity, tableOf } from "../../support/table-of.ts";

/** Tops of which the thickness h is measured with a relative error u; y = rest * h ^ power as measured, the true h and y tied by `law`. */
function tops(n: number, { u, power, law, seed }: { u: number; power: number; law: number; seed: number }) {
  const generator = generatorFromSeed(seed);
  const normal = () => normalQuantile(generator.next() || 0.5);
  const [measured, computed] = [new Float64Array(n), new Float64Array(n)];
  for (let i = 0; i < n; i++) {
    const [size, error] = [0.05 * normal(), u * normal()];
    measured[i] = 4 * Math.exp(size + error);
    computed[i] = 10 * Math.exp(0.1 * normal() + law * size + power * error);
  }
  const h = quantity("thickness", "mm", [...measured]);
  const x: QuantityColumn = { ...h, uncertainty: h.values.map((value) => u * value) };
  const plain = quantity("stiffness", "GPa", [...computed]);
  const y: QuantityColumn = {
    ...plain,
    origin: {
      from: "formula",
      formula: "bar_stiffness(mass, thickness)",
      parents: ["mass", "thickness"],
      roots: ["thickness"],
    },
    contributions: new Map([["thickness", { values: plain.values.map((value) => power * u * value), shared: false }]]),
  };
  return { x, y };
}
const ask = ({ x, y }: ReturnType<typeof tops>, powerLaw = false, by: string | null = null) =>
  answerRelation({
    table: tableOf([x, y]),
    y,
    x: [x],
    allowingFor: [],
    within: null,
    powerLaw,
    mask: null,
    by,
    asked: 1,
  }) as Answer;
const told = (found: Answer, code: string) => found.cautions.find((one) => one.code === code);
const numbersIn = (text: string) => [...text.matchAll(/−?\d+\.\d+/g)].map(([one]) => Number(one.replace("−", "-")));

describe("a thickness whose error is in both", () => {
  const only = tops(1600, { u: 0.03, power: -3, law: 0, seed: 3 });
  const closed = sharedMeasurementNull({ shared: 0.03, xExponent: 1, yExponent: -3, xOwn: 0.05, yOwn: 0.1 });
  it.each([false, true])("alone gives Pearson's correlation (in logarithms: %s)", (powerLaw) => {
    const facts = told(ask(only, powerLaw), "shared-error")!.facts as { alone: string; seen: string };
    const [middle = 0, low = 0, high = 0] = numbersIn(facts.alone);
    // What is drawn has the error on top of a spread that holds one already.
    const twice = sharedMeasurementNull({
      shared: 0.03,
      xExponent: 1,
      yExponent: -3,
      xOwn: Math.hypot(0.05, 0.03),
      yOwn: Math.hypot(0.1, 0.09),
    });
    expect(Math.abs(middle - twice.correlation)).toBeLessThan(0.02);
    expect(closed.correlation).toBeLessThan(twice.correlation);
    expect(high - low).toBeGreaterThan(0.07);
    expect(high - low).toBeLessThan(0.12);
  });
  it("flattens and tilts: the corrected slope is the true one, none", () => {
    const found = ask(only);
    const [naive, corrected] = [found.estimate[0]!, found.estimate.find(({ name }) => name.includes("corrected"))!];
    expect(naive.high).toBeLessThan(0);
    expect(Math.abs(corrected.value)).toBeLessThan(2.5 * corrected.standardError!);
  });
  it("takes back what a few records seem to say", () => {
    const few = tops(60, { u: 0.04, power: -3, law: 0, seed: 8 });
    const found = ask(few);
    expect(found.estimate[0]!.high).toBeLessThan(0);
    expect(found.sentence).toMatch(/The error of thickness, which is in both, may give as much alone\.$/);
    expect(found.checks.find(({ id }) => id === "shared-error-thickness")!.passed).toBe(false);
  });
  it("is known to York's line, whose slope is then that of what lies behind", () => {
    const strong = tops(1600, { u: 0.03, power: -3, law: 2, seed: 6 });
    const apart = { ...strong, y: { ...strong.y, contributions: new Map() } };
    const y = { ...strong.y, uncertainty: strong.y.values.map((value) => 0.135 * value) };
    const own = { ...apart, y: { ...apart.y, uncertainty: y.uncertainty } };
    const [tied, loose] = [{ ...strong, y }, own].map((one) => ask(one, false, "york").estimate[0]!);
    // y = 10 exp(2 s), x = 4 exp(s): 5 GPa a mm at the middle; y's own scatter of 10 % is in its uncertainty here.
    expect(Math.abs(tied!.value - 5)).toBeLessThan(3 * tied!.standardError!);
    expect(Math.abs(loose!.value - 5)).toBeGreaterThan(3 * loose!.standardError!);
  });
  it("leaves a law that is far beyond it", () => {
    const found = ask(tops(120, { u: 0.01, power: -3, law: -4, seed: 4 }));
    expect(found.sentence).not.toContain("alone");
    expect(found.checks.filter(({ id }) => id.startsWith("shared-error")).every(({ passed }) => passed)).toBe(true);
  });
  it("comes back the same", () => expect(ask(only).cautions).toEqual(ask(only).cautions));
});

it("a density set beside the mass it was computed from says that arithmetic gives as much", () => {
  const n = 80;
  const generator = generatorFromSeed(12);
  const normal = () => normalQuantile(generator.next() || 0.5);
  const masses = Array.from({ length: n }, () => 180 * Math.exp(0.1 * normal()));
  const volumes = masses.map(() => 4.3e-4 * Math.exp(0.05 * normal()));
  const mass = quantity("mass", "g", masses, 0.1);
  const plain = quantity(
    "density",
    "kg/m3",
    masses.map((one, i) => one / 1000 / volumes[i]!),
  );
  const density: QuantityColumn = {
    ...plain,
    origin: { from: "formula", formula: "mass / volume", parents: ["mass", "volume"], roots: ["mass", "volume"] },
    contributions: new Map([
      ["mass", { values: plain.values.map((one, i) => (one / masses[i]!) * 0.1), shared: false }],
    ]),
  };
  const found = ask({ x: mass, y: density });
  expect(found.sentence).toMatch(/As much comes of arithmetic alone: mass is in both\.$/);
  const { arithmetic } = told(found, "shared-error")!.facts as { arithmetic: string };
  // ln density = ln mass - ln volume: correlation 0.1 / sqrt(0.1^2 + 0.05^2) = 0.894.
  expect(Math.abs(numbersIn(arithmetic)[0]! - 0.1 / Math.hypot(0.1, 0.05))).toBeLessThan(0.04);
});

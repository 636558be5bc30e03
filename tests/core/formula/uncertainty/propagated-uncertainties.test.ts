import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Method, type MethodInputs, succeeded } from "../../../../src/core/base/index.ts";
import { type PropagatedUncertainty, propagatedUncertainties } from "../../../../src/core/formula/index.ts";
import { woodMethods } from "../../../../src/core/wood/index.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

const methodNamed = (id: string): Method => {
  const found = woodMethods.find((each) => each.id === id);
  if (!found) throw new Error(id);
  return found;
};
function of(
  method: Method,
  inputs: MethodInputs,
  uncertainties: Readonly<Record<string, number>>,
  field: string,
  correlations?: unknown,
): PropagatedUncertainty {
  const made = propagatedUncertainties(method, inputs, uncertainties, correlations);
  if (!made.ok) throw new Error(made.refusal.code);
  return made.value[field] as PropagatedUncertainty;
}
const bar = { mass: 0.0421, length: 0.55, width: 0.05, thickness: 0.0034, frequency: 61.3 };
const off = { mass: 0.0001, length: 0.0003, width: 0.0001, thickness: 0.00003, frequency: 0.2 };
const square: Method = {
  ...methodNamed("density"),
  fields: { y: { meaning: "y", dimension: "1" } },
  inputs: { x: { kind: "quantity", meaning: "x" } },
  run: ({ x }) => succeeded({ y: Number(x) ** 2 }),
};

describe("uncertainty of a quantity", () => {
  it("of a bar's E has the exponents 1, 2, 3, -1, -3", () => {
    const made = of(methodNamed("bar-stiffness"), bar, off, "youngsModulus");
    const relative = Math.sqrt(
      (0.0001 / 0.0421) ** 2 +
        (2 * (0.2 / 61.3)) ** 2 +
        (3 * (0.0003 / 0.55)) ** 2 +
        (0.0001 / 0.05) ** 2 +
        (3 * (0.03 / 3.4)) ** 2,
    );
    const run = methodNamed("bar-stiffness").run(bar);
    const value = run.ok ? Number(run.value.youngsModulus) : Number.NaN;
    closeTo(made.standard ?? 0, relative * value, 1e-12);
    closeTo(made.shares.thickness ?? 0, (3 * (0.03 / 3.4)) ** 2 / relative ** 2, 1e-12);
    expect(made.chosen).toBe("first-order");
  });
  it("with one calliper for length, width and thickness goes as its scale error to the power -1", () => {
    const g = 0.004;
    const scale = { length: 0.55 * g, width: 0.05 * g, thickness: 0.0034 * g };
    const pairs = [
      ["length", "width"],
      ["length", "thickness"],
      ["width", "thickness"],
    ];
    const correlations = pairs.map((between) => ({ between, coefficient: 1 }));
    const run = methodNamed("bar-stiffness").run(bar);
    const value = run.ok ? Number(run.value.youngsModulus) : Number.NaN;
    closeTo(of(methodNamed("bar-stiffness"), bar, scale, "youngsModulus", correlations).standard ?? 0, g * value, 1e-9);
  });
  it("of x squared about 0 is found by drawing: the standard deviation of chi-square, sqrt 2", () => {
    const made = of(square, { x: 0 }, { x: 1 }, "y");
    expect(made.chosen).toBe("Monte Carlo");
    closeTo(made.standard ?? 0, Math.SQRT2, 0.02);
    closeTo(made.mean ?? 0, 1, 0.01);
  });
  it("of x squared far from 0 is first order, 2 x u", () =>
    closeTo(of(square, { x: 10 }, { x: 0.1 }, "y").standard ?? 0, 2, 1e-12));
  it("is given to each item of a list", () => {
    const list: Method = { ...square, run: ({ x }) => succeeded({ y: [Number(x), 3 * Number(x)] }) };
    const made = propagatedUncertainties(list, { x: 10 }, { x: 0.1 });
    const items = made.ok ? (made.value.y as readonly PropagatedUncertainty[]) : [];
    closeTo(items[0]?.standard ?? 0, 0.1, 1e-12);
    closeTo(items[1]?.standard ?? 0, 0.3, 1e-12);
  });
  it("declines a negative uncertainty by name, and correlations that cannot be", () => {
    const negative = propagatedUncertainties(square, { x: 1 }, { x: -0.1 });
    expect(negative).toEqual({ ok: false, refusal: { code: "negative-uncertainty", facts: { name: "x" } } });
    const between = (a: string, b: string, coefficient: number) => ({ between: [a, b], coefficient });
    const impossible = [between("mass", "length", 1), between("length", "width", 1), between("mass", "width", -1)];
    const { mass, length, width } = off;
    const contradicting = propagatedUncertainties(methodNamed("density"), bar, { mass, length, width }, impossible);
    expect(contradicting.ok || contradicting.refusal.code).toBe("contradicting-correlations");
  });
  law(
    "first order and Monte Carlo agree for a nearly linear model: the density, by drawing in plain sums",
    [fc.double({ min: 0.001, max: 0.01, noNaN: true })],
    (relative) => {
      const { mass, length, width, thickness } = bar;
      const density = { mass, length, width, thickness };
      const errors = {
        mass: mass * relative,
        length: length * relative,
        width: width * relative,
        thickness: thickness * relative,
      };
      const value = mass / (length * width * thickness);
      closeTo(of(methodNamed("density"), density, errors, "density").standard ?? 0, 2 * relative * value, 1e-10);
    },
    30,
  );
  it("is given for every quantity that has inputs of one number each, and is finite or withheld with a reason", () => {
    const sizes: Readonly<Record<string, number>> = { kg: 0.1, m: 0.3, Pa: 1e10, Hz: 100, "kg/m3": 400, "1": 0.1 };
    let answered = 0;
    for (const method of woodMethods) {
      const specs = Object.entries(method.inputs).filter(([, { optional, kind }]) => !optional && kind === "quantity");
      const inputs = Object.fromEntries(specs.map(([name, { dimension }]) => [name, sizes[dimension ?? "1"] ?? 0.12]));
      if (!method.run(inputs).ok || method.id.startsWith("plate")) continue;
      const errors = Object.fromEntries(Object.entries(inputs).map(([name, value]) => [name, value * 1e-3]));
      const made = propagatedUncertainties(method, inputs, errors);
      expect(made.ok, method.id).toBe(true);
      if (!made.ok) continue;
      answered++;
      for (const [field, { standard, why }] of Object.entries(made.value).flatMap(([name, one]) =>
        [one].flat().map((each) => [name, each] as const),
      ))
        expect(standard === null ? why : Number.isFinite(standard), `${method.id}, ${field}`).toBeTruthy();
    }
    expect(answered).toBeGreaterThan(20);
  });
});

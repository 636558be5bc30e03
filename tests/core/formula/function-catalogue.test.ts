import { expect, it } from "vitest";
import { functionCatalogue, groupFunctions, signature } from "../../../src/core/formula/index.ts";
import { closeTo } from "../../support/close-to.ts";

it("each function is called by one name, has a source and an example that calls it", () => {
  expect(new Set(functionCatalogue.map(({ id }) => id)).size).toBe(functionCatalogue.length);
  for (const each of functionCatalogue) {
    expect(each.id).toMatch(/^[a-z][a-z0-9_]*$/);
    expect(each.source.citation).not.toBe("");
    expect(each.example.startsWith(`${each.id}(`)).toBe(true);
  }
});
it("a signature names its arguments", () =>
  expect(functionCatalogue.filter(({ id }) => id === "bar_stiffness" || id === "max").map(signature)).toEqual([
    "max(x, y, …)",
    "bar_stiffness(mass, length, width, thickness, frequency, [shear])",
  ]));
it("known derivatives are those of the function", () => {
  for (const { id, evaluate, partials, arguments: takes } of functionCatalogue) {
    if (!partials || id === "round") continue;
    const at = [1.7, 2.9, 1.3, 2.2, 3.1, 0.9].slice(0, takes.length);
    for (const [k, slope] of partials(...at).entries()) {
      const [above, below] = [1e-6, -1e-6].map((step) => evaluate(...at.map((x, i) => (i === k ? x + step : x))));
      closeTo(((above ?? 0) - (below ?? 0)) / 2e-6, slope, 1e-7, { scale: Math.max(1, Math.abs(slope)) });
    }
  }
});
it("weights of a group function are its derivatives", () => {
  const values = Float64Array.from([2, 5, 3.5, 9]);
  for (const { evaluate, weights } of groupFunctions) {
    for (const [k, weight] of weights(values, evaluate(values)).entries()) {
      const [above, below] = [1e-6, -1e-6].map((step) => evaluate(values.map((x, i) => (i === k ? x + step : x))));
      closeTo(((above ?? 0) - (below ?? 0)) / 2e-6, weight, 1e-7, { scale: 1 });
    }
  }
});

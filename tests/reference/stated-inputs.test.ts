// Correlations of a model's inputs, however a case states them (JCGM 100:2008, equation 16: u^2 = b^2 u_a^2 + a^2 u_b^2 + 2 r a b u_a u_b for a product).
import { expect, it } from "vitest";
import { methods } from "../../src/notebook/engine/index.ts";
import { closeTo } from "../support/close-to.ts";
import { statsCaseResult } from "./case-adapter.ts";
import type { StatsCase } from "./stats-case.ts";

it.each([
  [
    "a square table",
    {
      correlations: [
        [1, 0.5],
        [0.5, 1],
      ],
    },
  ],
  ["a list of pairs", { correlations: [{ between: ["a", "b"], r: 0.5 }] }],
  ["a number by its letters", { r_ab: 0.5 }],
])("correlations as %s", (_, options) => {
  const one = {
    id: "g",
    method: "gum",
    data: { a: 3, u_a: 0.1, b: 2, u_b: 0.2 },
    options: { model: "a * b", ...options },
    expected: {},
  };
  const result = statsCaseResult(one as unknown as StatsCase, methods);
  expect(result?.refused).toBeUndefined();
  closeTo(result?.u as number, Math.sqrt(4 * 0.01 + 9 * 0.04 + 2 * 0.5 * 6 * 0.02), 1e-12);
});

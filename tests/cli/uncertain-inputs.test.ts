import { describe, expect, it } from "vitest";
import { methodAnswer } from "../../src/cli/method-answer.ts";
import { methods } from "../../src/notebook/engine/index.ts";
import { closeTo } from "../support/close-to.ts";

type Answer = {
  readonly result?: Record<string, number>;
  readonly uncertainties?: Record<string, { standard: number; chosen: string }>;
  readonly refused?: { readonly code: string; readonly sentence: string };
};
const asked = (inputs: unknown, more: object = {}): Answer =>
  methodAnswer(JSON.stringify({ id: 1, method: "density", inputs, ...more }), 1, methods) as Answer;
const amount = (value: number, unit: string, uncertainty?: number) => ({
  value,
  unit,
  ...(uncertainty === undefined ? {} : { uncertainty }),
});

const millimetres = {
  mass: amount(182.4, "g", 0.1),
  length: amount(550, "mm", 0.5),
  width: amount(205, "mm", 0.5),
  thickness: amount(4.02, "mm", 0.03),
};
const inches = {
  mass: amount(182.4, "g", 0.1),
  length: amount(550 / 25.4, "in", 0.5 / 25.4),
  width: amount(205 / 25.4, "in", 0.5 / 25.4),
  thickness: amount(4.02 / 25.4, "in", 0.03 / 25.4),
};
const relative = ({ result, uncertainties }: Answer): number =>
  (uncertainties?.density?.standard ?? Number.NaN) / (result?.density ?? Number.NaN);

describe("inputs with an uncertainty", () => {
  it("give the answer one, by the relative errors of a product", () =>
    closeTo(relative(asked(millimetres)), Math.hypot(0.1 / 182.4, 0.5 / 550, 0.5 / 205, 0.03 / 4.02), 1e-12));
  it("give the same in inches", () => closeTo(relative(asked(inches)), relative(asked(millimetres)), 1e-12));
  it("may say it in their text", () => {
    const texts = { ...millimetres, mass: "182.4 ± 0.1 g", length: "550(1) mm", thickness: amount(4.02, "mm") };
    const width = { value: "205 +/- 0.5", unit: "mm" };
    closeTo(relative(asked({ ...texts, width })), Math.hypot(0.1 / 182.4, 1 / 550, 0.5 / 205), 1e-12);
  });
  it("say it once, and not within a list, where nothing would carry it", () => {
    const twice = { ...millimetres, mass: { value: "182.4 ± 0.1 g", uncertainty: 0.1 } };
    expect(asked(twice).refused?.sentence).toContain("uncertainty of mass");
    const values = ["11.8 ± 0.3 GPa", "10.9 GPa"];
    const line = { method: "weighted-mean", inputs: { values, uncertainties: ["0.3 GPa", "0.4 GPa"] } };
    expect((methodAnswer(JSON.stringify(line), 1, methods) as Answer).refused?.sentence).toContain("values");
  });
  it("leave an answer without one as it is", () =>
    expect(asked({ ...millimetres, mass: amount(182.4, "g") }).uncertainties).toBeDefined());
  it("may be correlated, beside the inputs", () => {
    const made = asked(millimetres, { correlations: [{ between: ["length", "width"], coefficient: 1 }] });
    closeTo(relative(made), Math.hypot(0.1 / 182.4, 0.5 / 550 + 0.5 / 205, 0.03 / 4.02), 1e-12);
  });
  it("are refused by name where negative, unknown or without an uncertainty", () => {
    const negative = asked({ ...millimetres, length: amount(550, "mm", -0.5) });
    expect(negative.refused?.code).toBe("negative-uncertainty");
    expect(negative.refused?.sentence).toContain("length");
    expect(asked(millimetres, { correlations: [{ between: ["length", "depth"], coefficient: 1 }] }).refused?.code).toBe(
      "out-of-domain",
    );
    expect(asked(millimetres, { correlations: [{ between: ["length", "width"], coefficient: 2 }] }).refused?.code).toBe(
      "out-of-domain",
    );
  });
});

describe("a value and its uncertainty", () => {
  const code = (method: string, inputs: unknown) =>
    (methodAnswer(JSON.stringify({ method, inputs }), 1, methods) as Answer).refused?.code;
  const pair = { first: "11 GPa", second: "1.5 Mpsi", secondExpanded: "0.5 GPa" };
  it("share a dimension, in any units", () => {
    expect(code("results-agree", { ...pair, firstExpanded: amount(700, "MPa") })).toBeUndefined();
    expect(code("results-agree", { ...pair, firstExpanded: amount(0.7, "mm") })).toBe("wrong-dimension");
    const values = ["11.8 GPa", "1.6 Mpsi"];
    expect(code("weighted-mean", { values, uncertainties: ["0.3 GPa", "0.06 Mpsi"] })).toBeUndefined();
    expect(code("weighted-mean", { values, uncertainties: { value: [0.3, 0.2], unit: "Hz" } })).toBe("wrong-dimension");
  });
  it("may be plain numbers", () =>
    expect(code("results-agree", { first: 11, firstExpanded: 0.7, second: 10, secondExpanded: 0.5 })).toBeUndefined());
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formulaMethods } from "../../../../src/core/formula/index.ts";
import { modelFromText } from "../../../../src/core/formula/uncertainty/model-from-text.ts";
import { modelValue, taylorJet } from "../../../../src/core/formula/uncertainty/taylor-jet.ts";
import { normalLowerTail } from "../../../../src/core/numerics/index.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

const run = (id: string, inputs: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> => {
  const made = formulaMethods.find((each) => each.id === id)?.run(inputs);
  return made?.ok ? made.value : { refused: made?.ok === false ? made.refusal.code : "none" };
};
const model = (text: string) => {
  const made = modelFromText(text);
  if (!made.ok || !made.value[0]) throw new Error(text);
  return made.value[0];
};

describe("a model as text", () => {
  it("has exact slopes and curvatures: against differences", () => {
    const one = model("x^3 * sin(y) / sqrt(z) + exp(-x) * log(y * z) + x^y - cos(z)^2");
    const place = [1.3, 0.7, 2.1];
    const { gradient, hessian } = taylorJet(one, place);
    const h = 1e-4;
    const at = (moves: readonly number[]) =>
      modelValue(
        one,
        place.map((x, i) => x + (moves[i] ?? 0) * h),
      );
    const unit = (i: number, size = 1) => [0, 0, 0].map((_, k) => (k === i ? size : 0));
    for (let i = 0; i < 3; i++) {
      closeTo(gradient[i] ?? 0, (at(unit(i)) - at(unit(i, -1))) / (2 * h), 1e-6);
      for (let j = 0; j < 3; j++) {
        const corner = (a: number, b: number) => at(unit(i, a).map((x, k) => x + (unit(j, b)[k] ?? 0)));
        closeTo(
          hessian[i * 3 + j] ?? 0,
          (corner(1, 1) - corner(1, -1) - corner(-1, 1) + corner(-1, -1)) / (4 * h * h),
          1e-4,
        );
      }
    }
  });
  it("reads powers before signs and from the right", () => {
    expect(modelValue(model("-2^2"), [])).toBe(-4);
    expect(modelValue(model("2^3^2"), [])).toBe(512);
    expect(modelValue(model("8 / 2 / 2 - 1 - 1"), [])).toBe(0);
  });
  it.each(["", "a +", "(a", "a b", "f(a)", "a = b = c", "r = r", "a = b, b = a", "a $ b", `${"(".repeat(200)}a`])(
    "is declined: %s",
    (text) => {
      const made = modelFromText(text);
      expect(made.ok || made.refusal.code).toBe("model-not-understood");
    },
  );
});

describe("first order", () => {
  it("of a difference of two inputs that are wholly correlated is the difference of their uncertainties", () => {
    const made = run("gum", {
      model: "a - b",
      inputs: [
        { name: "a", value: 5, u: 0.3 },
        { name: "b", value: 2, u: 0.1 },
      ],
      correlations: [{ between: ["a", "b"], coefficient: 1 }],
    });
    closeTo(Number(made.u), 0.2, 1e-12);
    closeTo(Number(made.u_ignoring_correlation), Math.hypot(0.3, 0.1), 1e-12);
  });
  it("says where the model is strongly curved", () => {
    const made = run("gum", { model: "x^2", inputs: [{ name: "x", value: 0.1, u: 1 }] });
    closeTo(Number(made.second_order_u), Math.sqrt(0.2 ** 2 + 2), 1e-12);
    expect(made.chosen).toContain("strongly curved");
  });
  it("declines a negative uncertainty, a name that is lacking, a name too many", () => {
    const inputs = [{ name: "x", value: 1, u: 1 }];
    expect(run("gum", { model: "x", inputs: [{ name: "x", value: 1, u: -1 }] }).refused).toBe("negative-uncertainty");
    expect(run("gum", { model: "x + y", inputs }).refused).toBe("out-of-domain");
    expect(run("gum", { model: "1 / x", inputs: [{ name: "x", value: 0, u: 1 }] }).refused).toBe("not-finite");
    expect(run("gum", { component_u: [1, -1] }).refused).toBe("negative-uncertainty");
    expect(run("gum", { x: [1, 1, 1], y: [1, 2, 3] }).refused).toBe("no-spread");
  });
  law(
    "does not depend on the unit of an input: millimetres or inches",
    [fc.double({ min: 1, max: 50, noNaN: true }), fc.double({ min: 0.001, max: 0.1, noNaN: true })],
    (value, share) => {
      const at = (factor: number, unit: string) =>
        Number(
          run("gum", {
            model: "m / x^3",
            inputs: [
              { name: "m", value: 2, u: 0.01 },
              { name: "x", value: value / factor, u: (share * value) / factor, unit },
            ],
          }).relative_u,
        );
      closeTo(at(25.4, "in"), at(1, "mm"), 1e-12);
    },
  );
});

describe("Monte Carlo", () => {
  const normal = (name: string, mean: number, sd: number) => ({ name, law: "normal", mean, sd });
  it("agrees with first order for a linear model with correlated inputs, within a thousandth", () => {
    const inputs = [normal("a", 5, 0.3), normal("b", 2, 0.2)];
    const correlations = [{ between: ["a", "b"], coefficient: -0.6 }];
    const made = run("monte-carlo-uncertainty", { model: "2 * a - b", inputs, correlations, draws: 200000 });
    const exact = Math.sqrt(0.36 + 0.04 + 2 * 2 * 0.6 * 0.06);
    closeTo(Number(made.u), exact, 1e-3);
    closeTo(Number(made.first_order_u), exact, 1e-12);
    closeTo(Number(made.exact_high), 8 + 1.959963984540054 * exact, 1e-9);
  });
  it.each([
    ["triangular", Math.sqrt(6), 0.5 - 0.125],
    ["u-shaped", Math.SQRT2, 1 / 3],
    ["rectangular", Math.sqrt(3), 0.25],
  ])("draws the %s law: its spread and how much lies beyond half its width", (shape, ratio, beyond) => {
    const made = run("monte-carlo-uncertainty", {
      model: "x",
      inputs: [{ name: "x", law: shape, mean: 0, half_width: 1 }],
      draws: 100000,
      level: shape === "triangular" ? 0.75 : 1 - 2 * beyond,
    });
    closeTo(Number(made.u), 1 / ratio, 1e-3);
    closeTo(Number(made.high), 0.5, 2e-3);
  });
  it("draws Student's t: its spread and its 97.5 % point at 5 degrees of freedom", () => {
    const made = run("monte-carlo-uncertainty", {
      model: "x",
      inputs: [{ name: "x", law: "t", mean: 0, scale: 1, df: 5 }],
      draws: 400000,
    });
    closeTo(Number(made.u), Math.sqrt(5 / 3), 0.01);
    closeTo(Number(made.high), 2.570581835636314, 0.01);
  });
  it("knows the product of two normals exactly: half of the product about zero lies on either side", () => {
    const made = run("monte-carlo-uncertainty", {
      model: "a * b",
      inputs: [normal("a", 0, 1), normal("b", 5, 0.4)],
      draws: 100000,
    });
    closeTo(Number(made.exact_high), -Number(made.exact_low), 1e-9);
    closeTo(Number(made.high), Number(made.exact_high), 5e-3);
  });
  it("gives the ratio's limit that the whole law of total probability gives (sums over b)", () => {
    const made = run("monte-carlo-uncertainty", {
      model: "a / b",
      inputs: [normal("a", 12, 0.6), normal("b", 0.41, 0.03)],
      draws: 1000,
    });
    const q = Number(made.exact_high);
    let sum = 0;
    for (let z = -8; z <= 8; z += 1e-3) {
      const b = 0.41 + 0.03 * z;
      sum += (normalLowerTail((q * b - 12) / 0.6) * Math.exp(-0.5 * z * z) * 1e-3) / Math.sqrt(2 * Math.PI);
    }
    closeTo(sum, 0.975, 1e-9);
  });
  it("comes back with its seed, and differs with another", () => {
    const at = (seed: number) =>
      run("monte-carlo-uncertainty", {
        model: "a * b",
        inputs: [normal("a", 1, 0.1), normal("b", 1, 0.1)],
        draws: 1000,
        seed,
      });
    expect(at(3)).toEqual(at(3));
    expect(at(3).u).not.toBe(at(4).u);
  });
});

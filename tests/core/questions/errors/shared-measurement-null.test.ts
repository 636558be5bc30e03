import { describe, expect, it } from "vitest";
import { sharedMeasurementNull } from "../../../../src/core/questions/errors/shared-measurement-null.ts";
import { errorMethods } from "../../../../src/core/questions/index.ts";
import { closeTo } from "../../../support/close-to.ts";

const run = (id: string, inputs: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> => {
  const made = errorMethods.find((each) => each.id === id)?.run(inputs);
  return made?.ok ? made.value : { refused: made?.ok === false ? made.refusal.code : "none" };
};

describe("a measurement that both columns share", () => {
  it("imitates the equal-stiffness exponent: the slope tends to -1/3 as the spread of E goes to 0", () =>
    closeTo(
      sharedMeasurementNull({ shared: 0.02, xExponent: 1, yExponent: -3, xOwn: 0.02, yOwn: 1e-9 }).slopeXOnY,
      -1 / 3,
      1e-9,
    ));
  it("shows in many simulated records what the formula says", () => {
    const made = run("shared-measurement-null", { xSpread: 0.02, error: 0.02, ySpread: 0.08, n: 20000 });
    closeTo((Number(made.slopeLow) + Number(made.slopeHigh)) / 2, -1.5, 0.01);
    closeTo((Number(made.correlationLow) + Number(made.correlationHigh)) / 2, Number(made.correlation), 0.01);
  });
  it("finds a slope of 0 unlikely where arithmetic alone gives -1.5, and -1.5 likely", () => {
    const spreads = { xSpread: 0.02, error: 0.02, ySpread: 0.08, n: 60 };
    expect(Number(run("shared-measurement-null", { ...spreads, found: 0.5 }).p)).toBeLessThan(0.01);
    expect(Number(run("shared-measurement-null", { ...spreads, found: -1.5 }).p)).toBeGreaterThan(0.5);
  });
  it("is refused without spread and with a negative one", () => {
    expect(run("shared-measurement-null", { xSpread: 0, error: 0, ySpread: 0.1 }).refused).toBe("out-of-domain");
    expect(run("shared-measurement-null", { xSpread: 0.1, error: -0.1, ySpread: 0.1 }).refused).toBe(
      "negative-uncertainty",
    );
  });
});

describe("agreement", () => {
  it("weighs by 1/u^2: three equal results are their plain mean, u over the root of three", () => {
    const made = run("weighted-mean", { values: [1, 2, 4.5], uncertainties: [0.3, 0.3, 0.3] });
    closeTo(Number(made.mean), 2.5, 1e-14);
    closeTo(Number(made.u), 0.3 / Math.sqrt(3), 1e-14);
  });
  it("asks 0.950 of four records", () =>
    closeTo(Number(run("correlation-evidence", { n: 4, r: 0.9 }).critical_r), 0.95, 1e-3));
  it("asks 0.997 of three", () =>
    closeTo(Number(run("correlation-evidence", { n: 3, r: 0.9 }).critical_r), 0.997, 1e-3));
});

describe("a rule in logarithms", () => {
  const x = [5, 7, 8, 11, 13, 17];
  const y = [3.1, 2.6, 2.7, 2.2, 2.3, 1.9];
  it("has the same slope in other units", () => {
    const one = run("rule-in-logs", { x, y });
    const other = run("rule-in-logs", { x: x.map((each) => each * 145.04), y: y.map((each) => each / 25.4) });
    closeTo(Number(other.slope), Number(one.slope), 1e-11);
    closeTo(Number(other.low), Number(one.low), 1e-11);
  });
  it("is refused for values of zero, and for a constant column", () => {
    expect(run("rule-in-logs", { x: [0, ...x.slice(1)], y }).refused).toBe("not-positive");
    expect(run("rule-in-logs", { x: x.map(() => 1), y }).refused).toBe("no-spread");
  });
});

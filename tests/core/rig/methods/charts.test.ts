import { describe, expect, it } from "vitest";
import { normalUpperTail } from "../../../../src/core/numerics/index.ts";
import { controlConstants } from "../../../../src/core/rig/methods/control-constants.ts";
import { cusum } from "../../../../src/core/rig/methods/cusum.ts";
import { enZeta } from "../../../../src/core/rig/methods/en-zeta.ts";
import { ewma } from "../../../../src/core/rig/methods/ewma.ts";
import { individualsChart } from "../../../../src/core/rig/methods/individuals-chart.ts";
import { closeTo } from "../../../support/close-to.ts";

const constants = (n: readonly number[]) => {
  const made = controlConstants.run({ n });
  return (made.ok ? made.value : {}) as Readonly<Record<string, readonly number[]>>;
};
/** d2 by another integral: that of 1 - Phi^n - (1 - Phi)^n over the line. */
function meanRange(n: number): number {
  let sum = 0;
  for (let i = -1280; i <= 1280; i++) {
    const size = Math.abs(i / 128);
    const tail = normalUpperTail(size);
    sum += -Math.expm1(n * Math.log1p(-tail)) - tail ** n;
  }
  return sum / 128;
}

describe("constants of control charts", () => {
  it("d2 is 2/sqrt(pi) of two, 3/sqrt(pi) of three; d3 of two is sqrt(2 - 4/pi)", () => {
    const { d2, d3 } = constants([2, 3]);
    closeTo(d2?.[0] ?? 0, 2 / Math.sqrt(Math.PI), 1e-12);
    closeTo(d2?.[1] ?? 0, 3 / Math.sqrt(Math.PI), 1e-12);
    closeTo(d3?.[0] ?? 0, Math.sqrt(2 - 4 / Math.PI), 1e-11);
  });
  it("d2 agrees with another integral up to groups of a thousand", () => {
    const sizes = [4, 10, 25, 200, 1000];
    const { d2 } = constants(sizes);
    for (const [at, n] of sizes.entries()) closeTo(d2?.[at] ?? 0, meanRange(n), 1e-11);
  });
  it("sizes that are none are declined", () => expect(controlConstants.run({ n: [1] }).ok).toBe(false));
});

describe("charts", () => {
  it("places are those of the list as given, a missing reading counted", () => {
    const made = individualsChart.run({ x: [1, 2, 1, Number.NaN, 2, 1, 2, 1, 50, 1, 2, 1, 2, 1, 2, 1, 2, 1, 2, 1] });
    expect(made.ok && made.value.out).toEqual([9]);
  });
  it("a span of three has ranges of three and the d2 of three", () => {
    const made = individualsChart.run({ x: [1, 4, 2, 9], span: 3 });
    expect(made.ok && made.value.mr).toEqual([3, 7]);
    closeTo(made.ok ? Number(made.value.sigma_hat) : 0, (5 * Math.sqrt(Math.PI)) / 3, 1e-12);
  });
  it("a head start brings the signal forward; mirrored readings change sides", () => {
    const x = [1, 1, 1, 1];
    const first = (more: object) => {
      const made = cusum.run({ x, target: 0, k: 0.5, h: 1.4, ...more });
      return made.ok ? made.value : {};
    };
    expect(first({}).first_signal).toBe(3);
    expect(first({ headstart: 0.7 }).first_signal).toBe(2);
    expect(first({ x: x.map((v) => -v) }).low).toEqual(first({}).high);
  });
  it("a weight of one is the readings themselves", () => {
    const made = ewma.run({ x: [3, 5, 4], target: 4, sigma: 1, lambda: 1, L: 3 });
    expect(made.ok && made.value).toMatchObject({ ewma: [3, 5, 4], upper: [7, 7, 7], out: [] });
    expect(ewma.run({ x: [3, 3, 3] }).ok).toBe(false);
  });
  it("scores of standard uncertainties are those of the expanded ones, twice as large", () => {
    const inputs = { x: [10.3, 9.9], reference: [10, 10] };
    const expanded = enZeta.run({ ...inputs, U: [0.2, 0.1], U_reference: [0.1, 0.2] });
    expect(enZeta.run({ ...inputs, U: [0.1, 0.05], U_reference: [0.05, 0.1], k: 1 })).toEqual(expanded);
  });
  it("scores need an uncertainty on one side", () => {
    expect(enZeta.run({ x: [1], U: [0], reference: [1], U_reference: [0] }).ok).toBe(false);
    expect(enZeta.run({ x: [1], U: [-1], reference: [1], U_reference: [0] })).toMatchObject({
      refusal: { code: "negative-uncertainty" },
    });
  });
});

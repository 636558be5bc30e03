import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { mean, sumOfSquares, tQuantile } from "../../numerics/index.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { levelInput } from "../inputs/level-input.ts";
import { numberInputs } from "../inputs/number-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";

const needs = { rows: 3, distinct: { x: 2 } };

/** A calibration line read backwards: which x gave this reading? By Fieller's theorem; refused where the slope may be zero. */
export const inversePrediction: Method = {
  id: "inverse-prediction",
  name: "Calibration line read backwards",
  answers: "rig",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "reference values" },
    y: { kind: "quantities", meaning: "readings of them" },
    y0: { kind: "number", meaning: "the reading, or mean of readings, to read back" },
    repeats_of_y0: {
      kind: "number",
      atLeast: 1,
      whole: true,
      optional: true,
      meaning: "readings behind y0, 1 unless given",
    },
    level: levelInput,
  },
  fields: {
    x0: { meaning: "value of x read back" },
    g: { meaning: "how far the slope is from being sure: t^2 var(slope) / slope^2; 1 or more is refused" },
    ci95_low: { meaning: "Fieller's interval, lower" },
    ci95_high: { meaning: "upper" },
    se_delta: { meaning: "first-order standard error" },
    wald_low: { meaning: "interval by it, lower" },
    wald_high: { meaning: "upper" },
    set_aside: { meaning: "records without both values" },
  },
  source: {
    citation: "Fieller (1954), JRSS B 16, 175-185; Draper and Smith (1998), Applied Regression Analysis, section 3.2",
    basis: "published",
  },
  run: (inputs) => {
    const given = numberInputs(inputs, { y0: {}, repeats_of_y0: { above: 0, otherwise: 1 } });
    if (!given.ok) return given;
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    const { y0, repeats_of_y0: repeats } = given.value;
    if (!(sumOfSquares(y) > 0)) return declined("no-spread", { column: "y" });
    const fit = linearFit([ones(y.length), x], y);
    const [constant, slope] = [fit.coefficients[0] as number, fit.coefficients[1] as number];
    if (!(fit.sigma > 0)) return declined("perfect-fit", { column: "y" });
    const t = tQuantile((1 + level) / 2, fit.degreesOfFreedom);
    const spread = sumOfSquares(x);
    const g = (t * fit.sigma) ** 2 / (slope ** 2 * spread);
    if (!(g < 1)) return declined("slope-may-be-zero", { name: "x" });
    const centre = mean(x);
    const x0 = (y0 - constant) / slope;
    const off = x0 - centre;
    const share = 1 / repeats + 1 / y.length;
    const half = (t * fit.sigma * Math.sqrt((1 - g) * share + off ** 2 / spread)) / Math.abs(slope) / (1 - g);
    const error = (fit.sigma / Math.abs(slope)) * Math.sqrt(share + off ** 2 / spread);
    if (![x0, half, error].every(Number.isFinite)) return declined("not-finite", { name: "x0" });
    const middle = centre + off / (1 - g);
    return succeeded({
      x0,
      g,
      ci95_low: middle - half,
      ci95_high: middle + half,
      se_delta: error,
      wald_low: x0 - t * error,
      wald_high: x0 + t * error,
      set_aside: pair.value.setAside,
    });
  },
};

import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { mean, standardDeviation, tQuantile } from "../../numerics/index.ts";
import { crossProducts } from "../fits/cross-products.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";
import { sources } from "./sources.ts";

const needs = { rows: 4, distinct: { x: 2, y: 2 } };

/** Deming's line for a known ratio of error variances (y over x): slope and constant; NaN where x and y do not vary together. */
export function demingLine(x: Float64Array, y: Float64Array, ratio: number): { slope: number; intercept: number } {
  const { meanX, meanY, xx, yy, xy } = crossProducts(x, y);
  const d = yy - ratio * xx;
  const root = Math.sqrt(d * d + 4 * ratio * xy * xy);
  const slope = d >= 0 ? (d + root) / (2 * xy) : (2 * ratio * xy) / (root - d);
  return { slope, intercept: meanY - slope * meanX };
}

/** Both quantities measured with error of a known ratio: the line, with leave-one-out standard errors. */
export const deming: Method = {
  id: "deming",
  name: "Deming's line (errors in both)",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "one reading of each piece" },
    y: { kind: "quantities", meaning: "the other reading" },
    level: levelInput,
    variance_ratio: { kind: "number", optional: true, meaning: "error variance of y over that of x, 1 if not given" },
  },
  fields: {
    slope: { meaning: "slope" },
    intercept: { meaning: "constant" },
    se_slope: { meaning: "leave-one-out standard error of the slope" },
    se_intercept: { meaning: "of the constant" },
    jackknife_slope: { meaning: "mean of the pseudo-values of the slope" },
    jackknife_intercept: { meaning: "of the constant" },
    ci95_low_slope: { meaning: "interval of the slope, lower" },
    ci95_high_slope: { meaning: "upper" },
    ci95_low_intercept: { meaning: "of the constant, lower" },
    ci95_high_intercept: { meaning: "upper" },
  },
  source: sources.linnet,
  run: (inputs) => {
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    const ratio = typeof inputs.variance_ratio === "number" ? inputs.variance_ratio : 1;
    if (!(ratio > 0)) return declined("out-of-domain", { name: "variance_ratio", needed: "a number above zero" });
    const n = x.length;
    const whole = demingLine(x, y, ratio);
    const parts = Array.from(x, (_, i) =>
      demingLine(
        x.filter((_, k) => k !== i),
        y.filter((_, k) => k !== i),
        ratio,
      ),
    );
    const pseudo = (of: "slope" | "intercept") =>
      Float64Array.from(parts, (part) => n * whole[of] - (n - 1) * part[of]);
    const [slopes, constants] = [pseudo("slope"), pseudo("intercept")];
    const [seSlope, seConstant] = [
      standardDeviation(slopes) / Math.sqrt(n),
      standardDeviation(constants) / Math.sqrt(n),
    ];
    if (![whole.slope, seSlope, seConstant].every(Number.isFinite))
      return declined("not-finite", { name: "the slope" });
    const t = tQuantile((1 + level) / 2, n - 2);
    return succeeded({
      ...whole,
      se_slope: seSlope,
      se_intercept: seConstant,
      jackknife_slope: mean(slopes),
      jackknife_intercept: mean(constants),
      ci95_low_slope: whole.slope - t * seSlope,
      ci95_high_slope: whole.slope + t * seSlope,
      ci95_low_intercept: whole.intercept - t * seConstant,
      ci95_high_intercept: whole.intercept + t * seConstant,
    });
  },
};

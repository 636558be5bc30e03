import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { median, normalQuantile } from "../../numerics/index.ts";
import { varianceOfKendallS } from "../fits/variance-of-kendall-s.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3, distinct: { x: 2 } };
const MOST = 3000;

/** Median of the slopes of all pairs with unlike x; the interval comes from Kendall's S (Sen 1968). Half the records may lie anywhere before it moves far. */
export const theilSen: Method = {
  id: "theil-sen",
  name: "Theil–Sen slope",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
    level: levelInput,
  },
  fields: {
    pairs: { meaning: "pairs with unlike x" },
    slope: { meaning: "median of their slopes" },
    intercept: { meaning: "median of y - slope x" },
    intercept_of_medians: { meaning: "median of y less slope times median of x" },
    kendall_S: { meaning: "concordant less discordant pairs" },
    var_S: { meaning: "its variance, ties counted" },
    C: { meaning: "normal quantile times its root" },
    rank_low: { meaning: "rank of the lower end among the sorted slopes" },
    rank_high: { meaning: "of the upper" },
    ci_low: { meaning: "lower end" },
    ci_high: { meaning: "upper end" },
  },
  source: sources.sen1968,
  run: (inputs) => {
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    if (x.length > MOST)
      return declined("out-of-domain", {
        name: "the number of records",
        needed: `${MOST} at most, for all pairs are formed`,
      });
    const slopes: number[] = [];
    let S = 0;
    for (let i = 0; i < x.length; i++)
      for (let j = i + 1; j < x.length; j++) {
        const [dx, dy] = [(x[j] as number) - (x[i] as number), (y[j] as number) - (y[i] as number)];
        S += Math.sign(dx) * Math.sign(dy);
        if (dx !== 0) slopes.push(dy / dx);
      }
    const sorted = Float64Array.from(slopes).sort();
    const slope = median(sorted);
    const variance = varianceOfKendallS(x, y);
    const C = normalQuantile((1 + level) / 2) * Math.sqrt(variance);
    const low = Math.floor((sorted.length - C) / 2);
    return succeeded({
      pairs: sorted.length,
      slope,
      intercept: median(y.map((value, i) => value - slope * (x[i] as number))),
      intercept_of_medians: median(y) - slope * median(x),
      kendall_S: S,
      var_S: variance,
      C,
      rank_low: low,
      rank_high: sorted.length + 1 - low,
      ci_low: low >= 1 ? (sorted[low - 1] ?? null) : null,
      ci_high: low >= 1 ? (sorted[sorted.length - low] ?? null) : null,
    });
  },
};

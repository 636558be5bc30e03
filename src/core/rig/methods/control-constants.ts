import { declined, type Method, succeeded } from "../../base/index.ts";
import { chiMean, normalRangeMoments } from "../../numerics/index.ts";
import { inputNumbers } from "./input-numbers.ts";

const MOST = 1000;

/** All constants for groups of n. n: whole, 2 to 1000; 3 sigma limits. */
function constantsOf(n: number) {
  const { mean: d2, standardDeviation: d3 } = normalRangeMoments(n);
  const c4 = chiMean(n);
  const spread = (3 * Math.sqrt(1 - c4 * c4)) / c4;
  return {
    d2,
    d3,
    c4,
    A2: 3 / (d2 * Math.sqrt(n)),
    A3: 3 / (c4 * Math.sqrt(n)),
    B3: Math.max(0, 1 - spread),
    B4: 1 + spread,
    D3: Math.max(0, 1 - (3 * d3) / d2),
    D4: 1 + (3 * d3) / d2,
    E2: 3 / d2,
  };
}
const keys = ["d2", "d3", "c4", "A2", "A3", "B3", "B4", "D3", "D4", "E2"] as const;

/**
 * Constants of control charts, computed for any size of group and not taken from a table: d2 and d3, mean and standard deviation of the range of n normal
 * values; c4, mean of their standard deviation; A2, A3, B3, B4, D3, D4, E2 for limits at three standard deviations.
 * Source: Tippett (1925), Biometrika 17, 364-387; ISO 7870-2:2013, table 2 has them rounded.
 */
export const controlConstants: Method = {
  id: "control-constants",
  name: "Constants of control charts",
  answers: "rig",
  needs: { rows: 1 },
  inputs: { n: { kind: "quantities", meaning: "sizes of group, whole numbers from 2" } },
  fields: {
    d2: { meaning: "mean range of n normal values, in standard deviations" },
    d3: { meaning: "standard deviation of that range" },
    c4: { meaning: "mean standard deviation of n normal values, in standard deviations" },
    A2: { meaning: "limits of means by the mean range" },
    A3: { meaning: "limits of means by the mean standard deviation" },
    B3: { meaning: "lower limit of standard deviations, not below zero" },
    B4: { meaning: "upper limit of standard deviations" },
    D3: { meaning: "lower limit of ranges, not below zero" },
    D4: { meaning: "upper limit of ranges" },
    E2: { meaning: "limits of single readings by the mean range" },
  },
  source: { citation: "Tippett (1925), Biometrika 17, 364-387; ISO 7870-2:2013", basis: "published" },
  run: (inputs) => {
    const sizes = inputNumbers(inputs.n);
    if (sizes.length === 0) return declined("too-few-records", { have: 0, need: 1 });
    if (!sizes.every((n) => Number.isInteger(n) && n >= 2 && n <= MOST))
      return declined("out-of-domain", { name: "n", needed: `whole numbers from 2 to ${MOST}` });
    const all = sizes.map(constantsOf);
    return succeeded(Object.fromEntries(keys.map((key) => [key, all.map((each) => each[key])])));
  },
};

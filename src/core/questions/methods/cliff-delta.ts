import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { normalQuantile, sumOfSquares, tQuantile } from "../../numerics/index.ts";
import { dominance } from "../groups/dominance.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { twoSamples } from "../inputs/two-samples.ts";

/** How often a value of the first group stands above one of the second, less how often below: for grades and for anything with an order. */
export const cliffDelta: Method = {
  id: "cliff-delta",
  name: "Cliff's delta",
  answers: "comparison",
  needs: { rows: 4, groups: 2 },
  inputs: {
    a: { kind: "quantities", meaning: "values or grades (as numbers) of the first group" },
    b: { kind: "quantities", meaning: "values or grades of the second group" },
    level: levelInput,
    quantile: {
      kind: "choice",
      choices: ["normal", "t"],
      optional: true,
      meaning: "law of the interval: normal unless given, or t with n + m - 2 degrees of freedom",
    },
  },
  fields: {
    delta: { meaning: "share of pairs with a above b, less share with a below b" },
    vargha_delaney_A: { meaning: "chance that a is above b, ties counted half" },
    variance: { meaning: "unbiased variance of delta, floored at (1 - delta^2) / (n m - 1)" },
    ci95_low: { meaning: "asymmetric interval, lower; absent where every pair goes one way" },
    ci95_high: { meaning: "upper" },
    set_aside: { meaning: "records without a value" },
  },
  source: {
    citation:
      "Cliff (1996), Ordinal Methods for Behavioral Data Analysis; Feng and Cliff (2004), J. Mod. Appl. Stat. Meth. 3, 322-332",
    basis: "published",
  },
  run: (inputs) => {
    const [samples, level] = [twoSamples(inputs, 2), levelFrom(inputs)];
    if (!samples.ok) return samples;
    if (!level.ok) return level;
    const { a, b, setAside } = samples.value;
    const [n, m] = [a.length, b.length];
    const { rows, columns, ties } = dominance(a, b);
    const delta = rows.reduce((sum, row) => sum + row, 0) / (n * m);
    const byRow = sumOfSquares(rows.map((row) => row / m - delta));
    const byColumn = sumOfSquares(columns.map((column) => column / n - delta));
    const within = n * m - ties - n * m * delta ** 2;
    const unbiased = (m ** 2 * byRow + n ** 2 * byColumn - within) / (n * m * (n - 1) * (m - 1));
    const variance = Math.max(unbiased, (1 - delta ** 2) / (n * m - 1));
    const upper = (1 + level.value) / 2;
    const z = inputs.quantile === "t" ? tQuantile(upper, n + m - 2) : normalQuantile(upper);
    const rest = 1 - delta ** 2 + z ** 2 * variance;
    const half = z * Math.sqrt(variance) * Math.sqrt((1 - delta ** 2) ** 2 + z ** 2 * variance);
    return succeeded({
      delta,
      vargha_delaney_A: (delta + 1) / 2,
      variance,
      ci95_low: rest > 0 ? (delta - delta ** 3 - half) / rest : null,
      ci95_high: rest > 0 ? (delta - delta ** 3 + half) / rest : null,
      set_aside: setAside,
    });
  },
};

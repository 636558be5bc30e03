import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { normalQuantile, normalUpperTail, pairOrders } from "../../numerics/index.ts";
import { varianceOfKendallS } from "../fits/variance-of-kendall-s.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3, distinct: { x: 2, y: 2 } };
const MOST_EXACT = 10;

/** How many orders of n things have each number of inversions, divided by n!; index = discordant pairs. */
function inversionShares(n: number): Float64Array {
  let shares = Float64Array.of(1);
  for (let k = 2; k <= n; k++) {
    const next = new Float64Array(shares.length + k - 1);
    shares.forEach((share, i) => {
      for (let j = 0; j < k; j++) next[i + j] = (next[i + j] as number) + share / k;
    });
    shares = next;
  }
  return shares;
}

/** Kendall's tau-b: concordant less discordant pairs, ties allowed for; exact p without ties to ten records. */
export const kendall: Method = {
  id: "kendall",
  name: "Rank correlation (Kendall)",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "one quantity or grade" },
    y: { kind: "quantities", meaning: "the other" },
    level: levelInput,
  },
  fields: {
    tau_b: { meaning: "tau-b" },
    z: { meaning: "S over its standard deviation" },
    p_normal: { meaning: "two-sided p by the normal law" },
    p_normal_continuity: { meaning: "with continuity correction" },
    ci95_low: { meaning: "interval, lower" },
    ci95_high: { meaning: "upper" },
    T: { meaning: "concordant pairs" },
    p_exact: { meaning: "exact p without ties, to ten records" },
  },
  source: sources.kendall,
  run: (inputs) => {
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    const n = x.length;
    const { concordant, discordant, untiedX, untiedY } = pairOrders(x, y);
    const S = concordant - discordant;
    const tau = S / Math.sqrt(untiedX * untiedY);
    const sd = Math.sqrt(varianceOfKendallS(x, y));
    const half = n > 4 ? normalQuantile((1 + level) / 2) * Math.sqrt(0.437 / (n - 4)) : Number.NaN;
    const inside = n > 4 && Math.abs(tau) < 1;
    const untied = untiedX === (n * (n - 1)) / 2 && untiedY === untiedX;
    const fewer = Math.min(concordant, discordant);
    const exact =
      untied && n <= MOST_EXACT
        ? Math.min(
            1,
            2 *
              inversionShares(n)
                .slice(0, fewer + 1)
                .reduce((sum, share) => sum + share, 0),
          )
        : null;
    return succeeded({
      tau_b: tau,
      z: S / sd,
      p_normal: 2 * normalUpperTail(Math.abs(S) / sd),
      p_normal_continuity: Math.min(1, 2 * normalUpperTail((Math.abs(S) - 1) / sd)),
      ci95_low: inside ? Math.tanh(Math.atanh(tau) - half) : null,
      ci95_high: inside ? Math.tanh(Math.atanh(tau) + half) : null,
      T: concordant,
      p_exact: exact,
    });
  },
};

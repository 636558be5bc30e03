import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { midranks, normalQuantile, tTwoSided } from "../../numerics/index.ts";
import { correlation } from "../fits/correlation.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3, distinct: { x: 2, y: 2 } };
const MOST_EXACT = 9;

/** Calls `see` with sum x y for every order of y (Heap's algorithm). */
function everyOrder(x: Float64Array, y: Float64Array, see: (sum: number) => void): void {
  const order = Float64Array.from(y);
  const state = new Int32Array(y.length);
  const look = () => see(order.reduce((sum, value, i) => sum + value * (x[i] as number), 0));
  look();
  for (let i = 1; i < order.length; ) {
    if ((state[i] as number) < i) {
      const j = i % 2 === 0 ? 0 : (state[i] as number);
      [order[i], order[j]] = [order[j] as number, order[i] as number];
      look();
      state[i] = (state[i] as number) + 1;
      i = 1;
    } else state[i++] = 0;
  }
}

/** Exact two-sided p: twice the smaller tail without ties; with ties the orders whose rho is at least as far from zero. */
function exactP(x: Float64Array, y: Float64Array, tied: boolean): { p: number; orders: number } {
  const n = x.length;
  const centre = (n * (n + 1) ** 2) / 4;
  const seen = x.reduce((sum, value, i) => sum + value * (y[i] as number), 0) - centre;
  let [orders, far, above, below] = [0, 0, 0, 0];
  everyOrder(x, y, (sum) => {
    const own = sum - centre;
    orders++;
    if (Math.abs(own) >= Math.abs(seen) - 1e-9) far++;
    if (own >= seen - 1e-9) above++;
    if (own <= seen + 1e-9) below++;
  });
  return { p: tied ? far / orders : Math.min(1, (2 * Math.min(above, below)) / orders), orders };
}

/** Correlation of ranks (ties share their mean rank), exact p by every order up to nine records. */
export const spearman: Method = {
  id: "spearman",
  name: "Rank correlation (Spearman)",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "one quantity or grade" },
    y: { kind: "quantities", meaning: "the other" },
    level: levelInput,
  },
  fields: {
    rho: { meaning: "rank correlation" },
    ci95_low: { meaning: "interval, lower" },
    ci95_high: { meaning: "upper" },
    p_t: { meaning: "two-sided p by t" },
    p_exact: { meaning: "exact p, to nine records" },
    permutations: { meaning: "orders counted" },
  },
  source: sources.bonettWright,
  run: (inputs) => {
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    const [a, b, n] = [midranks(x), midranks(y), x.length];
    const rho = correlation(a, b);
    const half = n > 3 ? normalQuantile((1 + level) / 2) * Math.sqrt((1 + (rho * rho) / 2) / (n - 3)) : Number.NaN;
    const open = Math.abs(rho) < 1;
    const exact = n <= MOST_EXACT ? exactP(a, b, new Set(x).size < n || new Set(y).size < n) : null;
    return succeeded({
      rho,
      ci95_low: open && n > 3 ? Math.tanh(Math.atanh(rho) - half) : null,
      ci95_high: open && n > 3 ? Math.tanh(Math.atanh(rho) + half) : null,
      p_t: open ? tTwoSided(rho * Math.sqrt((n - 2) / (1 - rho * rho)), n - 2) : 0,
      p_exact: exact?.p ?? null,
      permutations: exact?.orders ?? null,
    });
  },
};

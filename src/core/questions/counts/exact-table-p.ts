import { compensatedSum, logGamma } from "../../numerics/index.ts";
import { EQUALLY_LIKELY } from "./fisher-probabilities.ts";

/** A set of remaining row totals: what can still follow it, and how likely or unlikely the rest of a table can make it. */
type Node = {
  readonly rest: readonly number[];
  /** Where each step leads, the logarithm of its factor, and how many steps are alike. */
  readonly steps: { readonly to: number; readonly log: number; readonly times: number }[];
  most: number;
  least: number;
  readonly all: number;
};

const STEPS = 400_000;
const PATHS = 8_000_000;
const GRAIN = 1e10;

const logFactorial = (n: number): number => (n < 2 ? 0 : logGamma(n + 1));
const descending = (a: number, b: number) => b - a;

/** Every way to spread `total` over the rows without taking more than each has left, and the sum of log x! of it. */
function spreadOver(rest: readonly number[], total: number, visit: (left: number[], logs: number) => boolean): boolean {
  const left = [...rest];
  const room = rest.map((_, at) => rest.slice(at + 1).reduce((sum, each) => sum + each, 0));
  const place = (at: number, open: number, logs: number): boolean => {
    const own = rest[at] as number;
    if (at === rest.length - 1) {
      left[at] = own - open;
      return visit(left, logs + logFactorial(open));
    }
    for (let x = Math.max(0, open - (room[at] as number)); x <= Math.min(own, open); x++) {
      left[at] = own - x;
      if (!place(at + 1, open - x, logs + logFactorial(x))) return false;
    }
    return true;
  };
  return place(0, total, 0);
}

const nodeOf = (rest: readonly number[]): Node => ({
  rest,
  steps: [],
  most: Number.NEGATIVE_INFINITY,
  least: Number.POSITIVE_INFINITY,
  all:
    logFactorial(rest.reduce((sum, each) => sum + each, 0)) - rest.reduce((sum, each) => sum + logFactorial(each), 0),
});

/** The network of remaining row totals, a stage a column; rows that are left with the same totals in another order are one. Null beyond STEPS. */
function network(rows: readonly number[], columns: readonly number[]): readonly (readonly Node[])[] | null {
  const stages: Node[][] = [[nodeOf(rows.toSorted(descending))]];
  let budget = STEPS;
  for (const column of columns) {
    const places = new Map<string, number>();
    const next: Node[] = [];
    for (const node of stages.at(-1) ?? []) {
      const alike = new Map<string, { to: number; log: number; times: number }>();
      const done = spreadOver(node.rest, column, (left, logs) => {
        const rest = left.toSorted(descending);
        const key = rest.join();
        const to = places.get(key) ?? next.push(nodeOf(rest)) - 1;
        places.set(key, to);
        const log = logFactorial(column) - logs;
        const known = alike.get(`${to} ${Math.round(log * GRAIN)}`);
        if (known) known.times++;
        else alike.set(`${to} ${Math.round(log * GRAIN)}`, { to, log, times: 1 });
        return --budget > 0;
      });
      if (!done) return null;
      node.steps.push(...alike.values());
    }
    stages.push(next);
  }
  for (let stage = stages.length - 1; stage >= 0; stage--)
    for (const node of stages[stage] ?? []) {
      if (stage === stages.length - 1) [node.most, node.least] = [0, 0];
      for (const { to, log } of node.steps) {
        const after = stages[stage + 1]?.[to];
        node.most = Math.max(node.most, log + (after?.most ?? 0));
        node.least = Math.min(node.least, log + (after?.least ?? 0));
      }
    }
  return stages;
}

/**
 * Fisher's exact p of a table with any number of rows and columns: the sum over all tables with the same margins that are no more likely than the
 * one seen (within 1e-7 relative). table: whole numbers >= 0, rows of one length, no margin zero. Relative 1e-11.
 * Walks the network of remaining margins; a part of it whose tables all count, or all do not, is settled as a whole.
 * Null where that takes more than 400,000 steps or 8,000,000 paths: then a p from drawn tables is the way.
 * Source: C. R. Mehta, N. R. Patel (1983), JASA 78, 427-434.
 * @example exactTableP([[3, 1], [1, 3]]) // 0.4857142857142857
 */
export function exactTableP(table: readonly (readonly number[])[]): number | null {
  const rowTotals = table.map((row) => row.reduce((sum, each) => sum + each, 0));
  const columnTotals = (table[0] ?? []).map((_, at) => table.reduce((sum, row) => sum + (row[at] ?? 0), 0));
  const [rows, columns] =
    rowTotals.length <= columnTotals.length ? [rowTotals, columnTotals] : [columnTotals, rowTotals];
  const stages = network(rows, columns.toSorted(descending));
  if (!stages) return null;
  const seen =
    columns.reduce((sum, each) => sum + logFactorial(each), 0) -
    table.reduce((sum, row) => sum + row.reduce((inner, each) => inner + logFactorial(each), 0), 0);
  const limit = seen + EQUALLY_LIKELY;
  const whole = stages[0]?.[0]?.all ?? 0;
  const counted: number[] = [];
  let pasts = new Map<number, Map<number, { log: number; times: number }>>([[0, new Map([[0, { log: 0, times: 1 }]])]]);
  let budget = PATHS;
  for (const [stage, nodes] of stages.slice(0, -1).entries()) {
    const ahead = stages[stage + 1] ?? [];
    const next: typeof pasts = new Map();
    for (const [place, own] of pasts)
      for (const { to, log: step, times: alike } of nodes[place]?.steps ?? []) {
        const node = ahead[to];
        if (!node) continue;
        for (const past of own.values()) {
          const [log, times] = [past.log + step, past.times * alike];
          if (--budget < 0) return null;
          if (log + node.most <= limit) counted.push(times * Math.exp(log + node.all - whole));
          else if (log + node.least <= limit) {
            const there = next.get(to) ?? new Map<number, { log: number; times: number }>();
            next.set(to, there);
            const known = there.get(Math.round(log * GRAIN));
            if (known) known.times += times;
            else there.set(Math.round(log * GRAIN), { log, times });
          }
        }
      }
    pasts = next;
  }
  return Math.min(1, compensatedSum(counted));
}

import { declined, type Method, succeeded } from "../../base/index.ts";
import { chartValues } from "./chart-values.ts";

const number = (value: unknown, absent: number): number =>
  value === undefined ? absent : typeof value === "number" ? value : Number.NaN;

/** Sum of what exceeds the slack k, never below zero, from a head start on. */
function sums(above: readonly number[], k: number, start: number): readonly number[] {
  let sum = start;
  return above.map((value) => {
    sum = Math.max(0, sum + value - k);
    return sum;
  });
}

/**
 * Tabular cumulative sums, both sides: high_i = max(0, high_(i-1) + x_i - target - k), low_i = max(0, low_(i-1) + target - x_i - k); out where either is
 * above h. x: readings in order, a missing one is left out; target, k >= 0, h > 0 in the unit of x, or k and h in sigma where `sigma` is given.
 * Source: E. S. Page (1954), Biometrika 41, 100-115; head start: Lucas and Crosier (1982), Technometrics 24, 199-205.
 */
export const cusum: Method = {
  id: "cusum",
  name: "Cumulative sums, both sides",
  answers: "rig",
  needs: { rows: 1 },
  inputs: {
    x: { kind: "quantities", meaning: "readings in the order in which they were taken" },
    target: { kind: "quantity", meaning: "what they should be" },
    k: { kind: "quantity", atLeast: 0, meaning: "slack: what is not counted, half the shift to be found" },
    h: { kind: "quantity", above: 0, meaning: "decision limit of the sums" },
    sigma: { kind: "quantity", optional: true, above: 0, meaning: "where given, k and h are numbers of it" },
    headstart: { kind: "quantity", optional: true, atLeast: 0, meaning: "what both sums begin with, 0; often h / 2" },
  },
  fields: {
    high: { meaning: "upper sum after each reading" },
    low: { meaning: "lower sum after each reading" },
    out: { meaning: "places of readings after which a sum is above h, from 1" },
    out_high: { meaning: "places where the upper sum is above h" },
    out_low: { meaning: "places where the lower sum is above h" },
    first_signal: { meaning: "the first of them; withheld where there is none" },
  },
  source: {
    citation: "Page (1954), Biometrika 41, 100-115; Lucas and Crosier (1982), Technometrics 24, 199-205",
    basis: "published",
  },
  run: (inputs) => {
    const read = chartValues(inputs, 1);
    if (!read.ok) return read;
    const { values, places } = read.value;
    const sigma = number(inputs.sigma, 1);
    const [target, k, h] = [
      number(inputs.target, Number.NaN),
      sigma * number(inputs.k, Number.NaN),
      sigma * number(inputs.h, Number.NaN),
    ];
    const start = sigma * number(inputs.headstart, 0);
    if (!Number.isFinite(target)) return declined("out-of-domain", { name: "target", needed: "a number" });
    if (!(sigma > 0)) return declined("out-of-domain", { name: "sigma", needed: "a number above 0" });
    if (!(k >= 0)) return declined("out-of-domain", { name: "k", needed: "a number of 0 or more" });
    if (!(h > 0)) return declined("out-of-domain", { name: "h", needed: "a number above 0" });
    if (!(start >= 0)) return declined("out-of-domain", { name: "headstart", needed: "a number of 0 or more" });
    const away = values.map((value) => value - target);
    const high = sums(away, k, start);
    const low = sums(
      away.map((value) => -value),
      k,
      start,
    );
    const above = (side: readonly number[]) => places.filter((_, i) => (side[i] as number) > h);
    const out = places.filter((_, i) => (high[i] as number) > h || (low[i] as number) > h);
    return succeeded({ high, low, out, out_high: above(high), out_low: above(low), first_signal: out[0] ?? null });
  },
};

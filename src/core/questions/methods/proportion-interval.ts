import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { betaQuantile } from "../../numerics/index.ts";
import { wilsonInterval } from "../words/wilson-interval.ts";
import { sources } from "./sources.ts";

const list = (value: unknown): readonly number[] => (Array.isArray(value) ? value.map(Number) : typeof value === "number" ? [value] : []);

/** Share of n that is k, with the intervals of Wilson, of Clopper and Pearson (exact), and of Jeffreys. */
export const proportionInterval: Method = {
  id: "proportion-interval", name: "Interval of a share", answers: "words", needs: {},
  inputs: { k: { kind: "quantities", meaning: "how many hold" }, n: { kind: "quantities", meaning: "of how many, one or more" } },
  fields: { estimate: { meaning: "k over n" }, wilson_low: { meaning: "Wilson, lower" }, wilson_high: { meaning: "upper" }, clopper_pearson_low: { meaning: "exact, lower" }, clopper_pearson_high: { meaning: "upper" }, jeffreys_low: { meaning: "Jeffreys, lower" }, jeffreys_high: { meaning: "upper" } },
  source: sources.wilson,
  run: (inputs) => {
    const [k, n] = [list(inputs.k), list(inputs.n)];
    if (k.length === 0 || k.length !== n.length || n.some((one) => !(one >= 1))) return declined("too-few-records", { have: 0, need: 1 });
    if (k.some((one, i) => !(one >= 0 && one <= (n[i] as number)))) return declined("out-of-domain", { name: "k", needed: "a count from zero to n" });
    const each = (of: (k: number, n: number) => number) => k.map((one, i) => of(one, n[i] as number));
    return succeeded({
      estimate: each((a, b) => a / b), wilson_low: each((a, b) => wilsonInterval(a, b).low), wilson_high: each((a, b) => wilsonInterval(a, b).high),
      clopper_pearson_low: each((a, b) => (a === 0 ? 0 : betaQuantile(0.025, a, b - a + 1))), clopper_pearson_high: each((a, b) => (a === b ? 1 : betaQuantile(0.975, a + 1, b - a))),
      jeffreys_low: each((a, b) => (a === 0 ? 0 : betaQuantile(0.025, a + 0.5, b - a + 0.5))), jeffreys_high: each((a, b) => (a === b ? 1 : betaQuantile(0.975, a + 0.5, b - a + 0.5))),
    });
  },
};

import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import {
  bracketedRoot,
  logGamma,
  mean,
  noncentralTLowerTail,
  noncentralTUpperTail,
  sumOfSquares,
} from "../../numerics/index.ts";
import { knownNumber } from "../inputs/known-number.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { twoSamples } from "../inputs/two-samples.ts";

/** Noncentrality at which a tail that rises (or, turned, falls) with it has this size. NaN where none is found. */
function noncentrality(tail: (delta: number) => number, size: number, t: number): number {
  let [low, high] = [t - 1, t + 1];
  const f = (delta: number) => tail(delta) - size;
  const rises = f(t + 1) > f(t - 1);
  for (let reach = 1; reach < 1e6 && f(low) > 0 === rises; reach *= 2) low -= reach;
  for (let reach = 1; reach < 1e6 && f(high) > 0 !== rises; reach *= 2) high += reach;
  return f(low) > 0 === f(high) > 0 ? Number.NaN : bracketedRoot(f, low, high);
}

/** Difference of two groups in units of their common spread, corrected for small numbers. */
export const hedgesG: Method = {
  id: "hedges-g",
  name: "Hedges' g",
  answers: "comparison",
  needs: { rows: 4, groups: 2 },
  inputs: {
    a: { kind: "quantities", meaning: "values of the first group" },
    b: { kind: "quantities", meaning: "values of the second group" },
    level: levelInput,
  },
  fields: {
    d: { meaning: "mean of a less mean of b, over the pooled standard deviation" },
    g: { meaning: "d corrected for small numbers" },
    J: { meaning: "the correction" },
    d_low: { meaning: "interval of d by the noncentral t law, lower" },
    d_high: { meaning: "upper" },
    g_low: { meaning: "J times the limits of d, lower" },
    g_high: { meaning: "upper" },
    set_aside: { meaning: "records without a value" },
  },
  source: { citation: "Hedges (1981), Journal of Educational Statistics 6, 107-128", basis: "published" },
  run: (inputs) => {
    const [samples, level] = [twoSamples(inputs, 2), levelFrom(inputs)];
    if (!samples.ok) return samples;
    if (!level.ok) return level;
    const { setAside } = samples.value;
    const first = samples.value.a[0] as number;
    const [a, b] = [samples.value.a, samples.value.b].map((values) => values.map((value) => value - first)) as [
      Float64Array,
      Float64Array,
    ];
    const df = a.length + b.length - 2;
    const about = (values: Float64Array) => sumOfSquares(values.map((value) => value - mean(values)));
    const pooled = Math.sqrt((about(a) + about(b)) / df);
    if (!(pooled > 0)) return declined("no-spread", { column: "values within groups" });
    const d = (mean(a) - mean(b)) / pooled;
    if (!Number.isFinite(d)) return declined("not-finite", { name: "the difference" });
    const J = Math.exp(logGamma(df / 2) - Math.log(Math.sqrt(df / 2)) - logGamma((df - 1) / 2));
    const unit = Math.sqrt(1 / a.length + 1 / b.length);
    const [t, tail] = [d / unit, (1 - level.value) / 2];
    const low = unit * noncentrality((delta) => noncentralTUpperTail(t, df, delta), tail, t);
    const high = unit * noncentrality((delta) => noncentralTLowerTail(t, df, delta), tail, t);
    const correction = df > 1 ? J : Number.NaN;
    return succeeded({
      d,
      g: knownNumber(correction * d),
      J: knownNumber(correction),
      d_low: knownNumber(low),
      d_high: knownNumber(high),
      g_low: knownNumber(correction * low),
      g_high: knownNumber(correction * high),
      set_aside: setAside,
    });
  },
};

import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import {
  betaQuantile,
  betaUpperQuantile,
  binomialDensity,
  binomialLowerTail,
  binomialUpperTail,
} from "../../numerics/index.ts";
import { alternativeFrom, alternativeInput, tailsOf } from "../counts/alternative-input.ts";
import { EQUALLY_LIKELY } from "../counts/fisher-probabilities.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { numberInput } from "../inputs/number-input.ts";
import { wholeCounts } from "../inputs/whole-counts.ts";

/** Sum of the outcomes that are no more likely than the one seen; it is not twice a tail unless the base rate is one half. */
function twoSided(k: number, n: number, rate: number): number {
  const seen = binomialDensity(k, n, rate) * (1 + EQUALLY_LIKELY);
  const expected = n * rate;
  if (k === expected) return 1;
  // The density rises to its mode and falls after it, so that the far side ends at one place, found by halving.
  const isLess = k < expected;
  let [near, far] = isLess ? [Math.ceil(expected), n + 1] : [Math.floor(expected), -1];
  if (binomialDensity(near, n, rate) <= seen) far = near;
  while (Math.abs(far - near) > 1) {
    const middle = Math.floor((near + far) / 2);
    if (binomialDensity(middle, n, rate) <= seen) far = middle;
    else near = middle;
  }
  const own = isLess ? binomialLowerTail(k, n, rate) : binomialUpperTail(k - 1, n, rate);
  const other = isLess ? binomialUpperTail(far - 1, n, rate) : binomialLowerTail(far, n, rate);
  return Math.min(1, own + other);
}

/** Did it hold more, or less, often than a base rate? Exact. */
export const binomialTest: Method = {
  id: "binomial-test",
  name: "How often it held, against a base rate",
  answers: "verdict",
  needs: { rows: 1 },
  inputs: {
    k: { kind: "number", atLeast: 0, whole: true, meaning: "times it held" },
    n: { kind: "number", atLeast: 1, whole: true, meaning: "times it was tried" },
    base_rate: {
      kind: "number",
      above: 0,
      below: 1,
      optional: true,
      meaning: "rate to compare with, 0.5 unless given",
    },
    level: levelInput,
    alternative: alternativeInput,
  },
  fields: {
    estimate: { meaning: "share held" },
    p: { meaning: "p of the side looked at" },
    p_two_sided: { meaning: "outcomes no more likely than the one seen" },
    p_greater: { meaning: "p that it holds as often or more often" },
    p_less: { meaning: "p that it holds as seldom or more seldom" },
    ci95_low: { meaning: "exact interval, lower; open on one side where one side is looked at" },
    ci95_high: { meaning: "upper" },
  },
  source: {
    citation: "Clopper and Pearson (1934), Biometrika 26, 404-413, for the interval; exact binomial tails",
    basis: "published",
  },
  run: (inputs) => {
    const [counts, level] = [wholeCounts(inputs, ["k", "n"]), levelFrom(inputs)];
    if (!counts.ok) return counts;
    if (!level.ok) return level;
    const rate = numberInput(inputs, "base_rate", { above: 0, below: 1, otherwise: 0.5 });
    if (!rate.ok) return rate;
    const [k = 0, n = 0] = counts.value;
    if (n < 1) return declined("too-few-records", { have: n, need: 1 });
    if (k > n) return declined("out-of-domain", { name: "k", needed: "a whole number from 0 to n" });
    const alternative = alternativeFrom(inputs);
    const [lower, upper] = tailsOf(alternative, level.value);
    const p = {
      "two-sided": twoSided(k, n, rate.value),
      greater: k === 0 ? 1 : binomialUpperTail(k - 1, n, rate.value),
      less: binomialLowerTail(k, n, rate.value),
    };
    return succeeded({
      estimate: k / n,
      p: p[alternative],
      p_two_sided: p["two-sided"],
      p_greater: p.greater,
      p_less: p.less,
      ci95_low: k === 0 || lower === 0 ? 0 : betaQuantile(lower, k, n - k + 1),
      ci95_high: k === n || upper === 0 ? 1 : betaUpperQuantile(upper, k + 1, n - k),
    });
  },
};

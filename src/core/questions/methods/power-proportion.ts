import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { binomialQuantile, binomialUpperTail } from "../../numerics/index.ts";
import { numberInputs } from "../inputs/number-input.ts";

/** Power may fall again after it first reaches the target; beyond this many trials nothing is looked at. */
const MOST = 50_000;

/** The smallest count that is surprising under the base rate at this level: P(X >= count) <= alpha. */
const criticalCount = (n: number, base: number, alpha: number): number => {
  const count = binomialQuantile(1 - alpha, n, base) + 1;
  return binomialUpperTail(count - 2, n, base) <= alpha ? count - 1 : count;
};
/** One-sided: enough successes. Two-sided: half the level at each end, so that too few count as well. */
function powerOf(n: number, base: number, rate: number, alpha: number, sides: 1 | 2): number {
  const near = binomialUpperTail(criticalCount(n, base, alpha / sides) - 1, n, rate);
  return sides === 1 ? near : near + binomialUpperTail(criticalCount(n, 1 - base, alpha / 2) - 1, n, 1 - rate);
}

/** First n that reaches the target, and the n from which it never falls below again: exact power is saw-toothed. */
function trialsFor(
  base: number,
  rate: number,
  alpha: number,
  target: number,
  sides: 1 | 2,
): { readonly first: number; readonly from: number } | null {
  let [first, below] = [0, 0];
  for (let n = 1; n <= MOST; n++) {
    if (powerOf(n, base, rate, alpha, sides) < target) below = n;
    else if (first === 0) first = n;
    // The teeth shrink as 1 / sqrt(n): after three times the last fall, and a hundred more, none reaches back.
    if (first > 0 && n > 3 * below + 100) return { first, from: below + 1 };
  }
  return null;
}

/** How surely a rule that holds more (or less) often than a base rate would be seen to, and how many trials it would take. Exact. */
export const powerProportion: Method = {
  id: "power-proportion",
  name: "How many more trials (how often a rule holds)",
  answers: "verdict",
  needs: {},
  inputs: {
    base_rate: { kind: "number", above: 0, below: 1, meaning: "rate that chance alone would give" },
    hold_rate: { kind: "number", above: 0, below: 1, meaning: "rate at which the rule is thought to hold" },
    n: { kind: "number", atLeast: 1, whole: true, meaning: "trials now" },
    alpha: {
      kind: "number",
      above: 0,
      below: 1,
      optional: true,
      meaning: "level of the test, 0.05 unless given",
    },
    target_power: { kind: "number", above: 0, below: 1, optional: true, meaning: "wanted power, 0.8 unless given" },
    alternative: {
      kind: "choice",
      choices: ["greater", "less", "one-sided", "two-sided"],
      optional: true,
      meaning:
        "greater or less: more often or less often than the base rate; one-sided, as unless given: on the side of hold_rate; two-sided: half the level on each",
    },
  },
  fields: {
    power: { meaning: "power now" },
    critical_count: {
      meaning:
        "times it must hold to be surprising (at least, or for less often at most); n + 1 or -1 where no count is",
    },
    critical_count_other: { meaning: "two-sided: the count that surprises on the other side" },
    n_first: { meaning: "trials that first reach the wanted power; absent where 50,000 do not settle it" },
    n_from_here_on: { meaning: "trials from which the power never falls below it again" },
    more_needed: { meaning: "trials more until then" },
  },
  source: {
    citation: "exact binomial tails; Chernick and Liu (2002), The American Statistician 56, 149-155, for the saw teeth",
    basis: "published",
  },
  run: (inputs) => {
    const given = numberInputs(inputs, {
      base_rate: { above: 0, below: 1 },
      hold_rate: { above: 0, below: 1 },
      n: { above: 0, below: 1e7 },
      alpha: { above: 0, below: 1, otherwise: 0.05 },
      target_power: { above: 0, below: 1, otherwise: 0.8 },
    });
    if (!given.ok) return given;
    const { base_rate: base, hold_rate: rate, n, alpha, target_power: target } = given.value;
    if (!Number.isInteger(n)) return declined("out-of-domain", { name: "n", needed: "a whole number above 0" });
    // "less" is the same question of how often it does not hold.
    const sides = inputs.alternative === "two-sided" ? 2 : 1;
    const isLess = inputs.alternative === "less" || (inputs.alternative !== "greater" && rate < base);
    const [own, other] = isLess ? [1 - base, 1 - rate] : [base, rate];
    const critical = criticalCount(n, own, alpha / sides);
    const opposite = n - criticalCount(n, 1 - own, alpha / 2);
    const trials = other > own ? trialsFor(own, other, alpha, target, sides) : null;
    return succeeded({
      power: powerOf(n, own, other, alpha, sides),
      critical_count: isLess ? n - critical : critical,
      ...(sides === 2 ? { critical_count_other: isLess ? n - opposite : opposite } : {}),
      n_first: trials?.first ?? null,
      n_from_here_on: trials?.from ?? null,
      more_needed: trials ? Math.max(0, trials.from - n) : null,
    });
  },
};

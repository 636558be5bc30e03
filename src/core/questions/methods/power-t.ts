import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { noncentralTUpperTail, tQuantile } from "../../numerics/index.ts";
import { numberInputs } from "./number-input.ts";
import { smallestCount, wholeCount } from "./smallest-count.ts";

/** Power of a t test of two groups of `count` each, both tails counted; with one side only the tail of the difference. */
function powerOfGroups(count: number, effect: number, alpha: number, sides: 1 | 2): number {
  const df = 2 * (count - 1);
  const noncentrality = effect * Math.sqrt(count / 2);
  const critical = -tQuantile(alpha / sides, df);
  const near = noncentralTUpperTail(critical, df, noncentrality);
  return sides === 1 ? near : near + noncentralTUpperTail(critical, df, -noncentrality);
}

/** How surely a difference between two groups would be seen, and how many pieces a group it would take. */
export const powerT: Method = {
  id: "power-t",
  name: "How many more pieces (two groups)",
  answers: "comparison",
  needs: {},
  inputs: {
    n_per_group: { kind: "number", above: 1, meaning: "pieces in each group now" },
    difference: { kind: "number", meaning: "difference of means to be seen" },
    sd: { kind: "number", above: 0, meaning: "standard deviation within groups" },
    alpha: { kind: "number", above: 0, below: 1, optional: true, meaning: "level of the test, 0.05 unless given" },
    target_power: { kind: "number", above: 0, below: 1, optional: true, meaning: "wanted power, 0.8 unless given" },
    alternative: {
      kind: "choice",
      choices: ["two-sided", "one-sided"],
      optional: true,
      meaning: "two-sided unless given; one-sided looks only in the direction of the difference",
    },
  },
  fields: {
    power: { meaning: "power now" },
    n_for_target: {
      meaning: "pieces a group for the wanted power, not rounded; absent where ten million would not do",
    },
    n_for_target_ceiling: { meaning: "rounded up" },
    more_per_group: { meaning: "pieces more a group" },
  },
  source: {
    citation: "Cohen (1988), Statistical Power Analysis, chapter 2, by the noncentral t law",
    basis: "published",
  },
  run: (inputs) => {
    const given = numberInputs(inputs, {
      n_per_group: { above: 1 },
      difference: {},
      sd: { above: 0 },
      alpha: { above: 0, below: 1, otherwise: 0.05 },
      target_power: { above: 0, below: 1, otherwise: 0.8 },
    });
    if (!given.ok) return given;
    const { n_per_group: now, difference, sd, alpha, target_power: target } = given.value;
    const effect = Math.min(1e3, Math.abs(difference) / sd);
    const sides = inputs.alternative === "one-sided" ? 1 : 2;
    const powerAt = (count: number) => powerOfGroups(count, effect, alpha, sides);
    const needed = effect > 0 ? smallestCount(powerAt, target, 2) : null;
    return succeeded({
      power: powerAt(Math.min(now, 1e7)),
      n_for_target: needed,
      n_for_target_ceiling: needed === null ? null : wholeCount(needed),
      more_per_group: needed === null ? null : Math.max(0, wholeCount(needed) - now),
    });
  },
};

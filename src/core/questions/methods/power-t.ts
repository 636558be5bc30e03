import type { Method, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { noncentralTUpperTail, tQuantile } from "../../numerics/index.ts";
import { plannedAlternativeInput, plannedEffect } from "../counts/alternative-input.ts";
import { numberInputs } from "../inputs/number-input.ts";
import { smallestCount, wholeCount } from "../smallest-count.ts";

/** Pieces of a design: their degrees of freedom, and how many times the effect the noncentrality is. */
type Pieces = { readonly df: number; readonly reach: number };
const twoGroups = (n1: number, n2: number): Pieces => ({ df: n1 + n2 - 2, reach: Math.sqrt((n1 * n2) / (n1 + n2)) });
const oneGroup = (n: number): Pieces => ({ df: n - 1, reach: Math.sqrt(n) });

/**
 * Power of a t test by the noncentral t law: the chance that t passes its critical value when the effect (difference over standard deviation) is
 * there. sides: 2 counts both tails. effect: any real, above zero on the side that is looked at. Relative 1e-9.
 * Source: J. Cohen (1988), Statistical Power Analysis for the Behavioral Sciences, 2nd ed., chapter 2.
 */
function powerOfPieces({ df, reach }: Pieces, effect: number, alpha: number, sides: 1 | 2): number {
  const critical = -tQuantile(alpha / sides, df);
  const near = noncentralTUpperTail(critical, df, effect * reach);
  return sides === 1 ? near : Math.min(1, near + noncentralTUpperTail(critical, df, -effect * reach));
}

const MOST = 1e7;

/** Pieces now: in each group, in the two groups, or in the one there is; null for a plan from nothing. */
function piecesNow(inputs: MethodInputs): Outcome<readonly [number, number] | null> {
  const names = ["n_per_group", "n1", "n2", "n"].filter((name) => inputs[name] !== undefined);
  const domain = { above: 1, below: MOST + 1 };
  const given = numberInputs(inputs, Object.fromEntries(names.map((name) => [name, domain])));
  if (!given.ok) return given;
  const { n_per_group: each, n1, n2, n } = given.value;
  const lacking = n1 === undefined ? "n1" : "n2";
  if ((n1 === undefined) !== (n2 === undefined))
    return declined("input-missing", { name: lacking, meaning: "pieces in the other group" });
  if (n1 !== undefined && n2 !== undefined) return succeeded([n1, n2]);
  const same = each ?? n;
  return succeeded(same === undefined ? null : [same, same]);
}

/** How surely a difference would be seen, and how many pieces it would take: two groups, one group against a value, or pairs. */
export const powerT: Method = {
  id: "power-t",
  name: "How many more pieces (a difference of means)",
  answers: "comparison",
  needs: {},
  inputs: {
    n_per_group: { kind: "number", above: 1, optional: true, meaning: "pieces in each group now" },
    n1: { kind: "number", above: 1, optional: true, meaning: "pieces in the first group, where the two differ" },
    n2: { kind: "number", above: 1, optional: true, meaning: "pieces in the second group" },
    n: { kind: "number", above: 1, optional: true, meaning: "pieces or pairs now, where there is one group" },
    difference: { kind: "number", meaning: "difference of means to be seen" },
    sd: { kind: "number", above: 0, meaning: "standard deviation within groups; of the differences for pairs" },
    alpha: { kind: "number", above: 0, below: 1, optional: true, meaning: "level of the test, 0.05 unless given" },
    target_power: { kind: "number", above: 0, below: 1, optional: true, meaning: "wanted power, 0.8 unless given" },
    alternative: plannedAlternativeInput,
    design: {
      kind: "choice",
      choices: ["two-sample", "one-sample", "paired"],
      optional: true,
      meaning: "two groups unless given; one-sample for one group against a value, paired for pairs",
    },
  },
  fields: {
    power: { meaning: "power now; withheld without a number of pieces" },
    n_for_target: {
      meaning: "pieces a group (or pairs) for the wanted power, not rounded; withheld where ten million would not do",
    },
    n_for_target_ceiling: { meaning: "rounded up" },
    more_per_group: { meaning: "pieces more a group; withheld for unlike groups" },
    n1_for_target: { meaning: "unlike groups that keep their ratio: pieces in the first, not rounded" },
    n2_for_target: { meaning: "and in the second" },
  },
  source: {
    citation: "Cohen (1988), Statistical Power Analysis, chapter 2, by the noncentral t law",
    basis: "published",
  },
  run: (inputs) => {
    const given = numberInputs(inputs, {
      difference: {},
      sd: { above: 0 },
      alpha: { above: 0, below: 1, otherwise: 0.05 },
      target_power: { above: 0, below: 1, otherwise: 0.8 },
    });
    if (!given.ok) return given;
    const now = piecesNow(inputs);
    if (!now.ok) return now;
    const { difference, sd, alpha, target_power: target } = given.value;
    const [effect, sides] = plannedEffect(inputs, Math.max(-1e3, Math.min(1e3, difference / sd)));
    const isOneGroup = inputs.design === "one-sample" || inputs.design === "paired";
    const [n1, n2] = now.value ?? [Number.NaN, Number.NaN];
    if (isOneGroup && now.value && n1 !== n2)
      return declined("out-of-domain", { name: "n2", needed: "no second number of pieces, for there is one group" });
    const powerAt = (first: number, second: number) =>
      powerOfPieces(isOneGroup ? oneGroup(first) : twoGroups(first, second), effect, alpha, sides);
    const needed = effect > 0 ? smallestCount((n) => powerAt(n, n), target, 2) : null;
    const ratio = n2 / n1;
    const first =
      effect > 0 && now.value && n1 !== n2
        ? smallestCount((n) => powerAt(n, n * ratio), target, Math.max(2, 2 / ratio))
        : null;
    return succeeded({
      power: now.value ? powerAt(n1, n2) : null,
      n_for_target: needed,
      n_for_target_ceiling: needed === null ? null : wholeCount(needed),
      more_per_group: needed === null || !(n1 === n2) ? null : Math.max(0, wholeCount(needed) - n1),
      ...(first === null ? {} : { n1_for_target: first, n2_for_target: first * ratio }),
    });
  },
};

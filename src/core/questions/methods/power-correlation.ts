import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { normalLowerTail, normalQuantile, tQuantile } from "../../numerics/index.ts";
import { plannedAlternativeInput, plannedEffect } from "../counts/alternative-input.ts";
import { numberInputs } from "../inputs/number-input.ts";
import { smallestCount, wholeCount } from "../smallest-count.ts";

/** Power from Fisher's z of the critical correlation of the t test, with the term r / (2 (n - 1)) of its mean. sides: 2 counts both tails. */
function powerOfCorrelation(r: number, n: number, alpha: number, sides: 1 | 2): number {
  const t = -tQuantile(alpha / sides, n - 2);
  const critical = Math.atanh(t / Math.sqrt(t * t + n - 2));
  const z = Math.atanh(r) + r / (2 * (n - 1));
  const near = normalLowerTail((z - critical) * Math.sqrt(n - 3));
  return sides === 1 ? near : near + normalLowerTail((-z - critical) * Math.sqrt(n - 3));
}

/** The usual power by Fisher's z alone. */
function plainPower(r: number, n: number, alpha: number, sides: 1 | 2): number {
  const [z, critical] = [Math.atanh(r) * Math.sqrt(n - 3), -normalQuantile(alpha / sides)];
  const near = normalLowerTail(z - critical);
  return sides === 1 ? near : near + normalLowerTail(-z - critical);
}

/** How surely a correlation would be seen, and how many records it would take. */
export const powerCorrelation: Method = {
  id: "power-correlation",
  name: "How many more records (correlation)",
  answers: "relation",
  needs: {},
  inputs: {
    r: { kind: "number", above: -1, below: 1, meaning: "correlation to be seen" },
    n: { kind: "number", above: 3, meaning: "records now" },
    alpha: { kind: "number", above: 0, below: 1, optional: true, meaning: "level of the test, 0.05 unless given" },
    target_power: { kind: "number", above: 0, below: 1, optional: true, meaning: "wanted power, 0.8 unless given" },
    alternative: plannedAlternativeInput,
  },
  fields: {
    power: { meaning: "power now: z of the critical t, with the r / (2 (n - 1)) term" },
    n_for_target: { meaning: "records for the wanted power, not rounded; absent where ten million would not do" },
    n_for_target_ceiling: { meaning: "rounded up" },
    more_needed: { meaning: "records more" },
    power_plain_fisher: { meaning: "power by Fisher's z without that term" },
  },
  source: {
    citation: "Cohen (1988), Statistical Power Analysis, chapter 3; Fisher (1921), Metron 1, 3-32",
    basis: "published",
  },
  run: (inputs) => {
    const given = numberInputs(inputs, {
      r: { above: -1, below: 1 },
      n: { above: 3 },
      alpha: { above: 0, below: 1, otherwise: 0.05 },
      target_power: { above: 0, below: 1, otherwise: 0.8 },
    });
    if (!given.ok) return given;
    const { n, alpha, target_power: target } = given.value;
    const [r, sides] = plannedEffect(inputs, given.value.r);
    const needed = r > 0 ? smallestCount((count) => powerOfCorrelation(r, count, alpha, sides), target, 4) : null;
    return succeeded({
      power: powerOfCorrelation(r, n, alpha, sides),
      n_for_target: needed,
      n_for_target_ceiling: needed === null ? null : wholeCount(needed),
      more_needed: needed === null ? null : Math.max(0, wholeCount(needed) - n),
      power_plain_fisher: plainPower(r, n, alpha, sides),
    });
  },
};

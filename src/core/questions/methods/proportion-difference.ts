import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { wholeCounts } from "../inputs/whole-counts.ts";
import { wilsonInterval } from "./proportion-interval.ts";

/**
 * The difference of two shares k / n, first less second, from Wilson's interval of each (no continuity correction). k from 0 to n, n >= 1, level in (0, 1).
 * Source: R. G. Newcombe (1998), Statistics in Medicine 17, 873-890, method 10.
 */
export function newcombeInterval(
  [k1, n1]: readonly [number, number],
  [k2, n2]: readonly [number, number],
  level: number,
): { readonly value: number; readonly low: number; readonly high: number } {
  const [one, two] = [wilsonInterval(k1, n1, level), wilsonInterval(k2, n2, level)];
  const value = one.estimate - two.estimate;
  return {
    value,
    low: value - Math.hypot(one.estimate - one.low, two.high - two.estimate),
    high: value + Math.hypot(one.high - one.estimate, two.estimate - two.low),
  };
}

/** How much more often it held here than there: both Wilson intervals put together (Newcombe's method 10, no continuity correction). */
export const proportionDifference: Method = {
  id: "proportion-difference",
  name: "Difference of two shares",
  answers: "verdict",
  needs: { rows: 2 },
  inputs: {
    k1: { kind: "number", atLeast: 0, whole: true, meaning: "times it held in the first" },
    n1: { kind: "number", atLeast: 1, whole: true, meaning: "times it was tried in the first" },
    k2: { kind: "number", atLeast: 0, whole: true, meaning: "times it held in the second" },
    n2: { kind: "number", atLeast: 1, whole: true, meaning: "times it was tried in the second" },
    level: levelInput,
  },
  fields: {
    difference: { meaning: "first share less second" },
    ci95_low: { meaning: "interval, lower" },
    ci95_high: { meaning: "upper" },
  },
  source: { citation: "Newcombe (1998), Statistics in Medicine 17, 873-890, method 10", basis: "published" },
  run: (inputs) => {
    const [counts, level] = [wholeCounts(inputs, ["k1", "n1", "k2", "n2"]), levelFrom(inputs)];
    if (!counts.ok) return counts;
    if (!level.ok) return level;
    const [k1 = 0, n1 = 0, k2 = 0, n2 = 0] = counts.value;
    if (n1 < 1 || n2 < 1) return declined("too-few-records", { have: Math.min(n1, n2), need: 1 });
    if (k1 > n1) return declined("out-of-domain", { name: "k1", needed: "a whole number from 0 to n1" });
    if (k2 > n2) return declined("out-of-domain", { name: "k2", needed: "a whole number from 0 to n2" });
    const { value, low, high } = newcombeInterval([k1, n1], [k2, n2], level.value);
    return succeeded({ difference: value, ci95_low: low, ci95_high: high });
  },
};

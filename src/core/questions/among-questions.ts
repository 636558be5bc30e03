import type { Check, Estimate } from "../base/index.ts";
import { normalQuantile, tQuantile } from "../numerics/index.ts";
import { directionOf } from "./direction-of.ts";
import { intervalInWords } from "./interval-in-words.ts";

/** Level of each of `asked` >= 1 intervals that hold together at `level`. Source: Bonferroni (1936); Miller (1981), Simultaneous Statistical Inference, chapter 1. */
export const levelAmong = (asked: number, level = 0.95): number => 1 - (1 - level) / asked;

/**
 * The interval of an estimate as one of `asked` >= 1: each side grows as the t quantile (the normal one, where the estimate has no degrees of
 * freedom) grows from its own level to levelAmong. Intervals that are shared out among pairs already keep what they have.
 */
export function intervalAmong(estimate: Estimate, asked: number): Estimate {
  const { value, low, high, level, degreesOfFreedom } = estimate;
  const reach = (at: number) =>
    degreesOfFreedom === undefined ? normalQuantile((1 + at) / 2) : tQuantile((1 + at) / 2, degreesOfFreedom);
  const stretch = reach(levelAmong(asked, level)) / reach(level);
  return {
    ...estimate,
    low: value - stretch * (value - low),
    high: value + stretch * (high - value),
    level: levelAmong(asked, level),
  };
}

/** Which way an estimate points as one of `asked` questions: 1 up, -1 down, 0 where the interval of so many holds zero. */
export const directionAmong = (estimate: Estimate, asked: number): -1 | 0 | 1 =>
  asked > 1 ? directionOf(intervalAmong(estimate, asked)) : directionOf(estimate);

/** What is said of an answer that tells by itself and not as one of `asked`. */
export const notAmong = (asked: number): string =>
  `Taken alone it would tell; as one of ${asked} questions asked of these records it does not.`;

/** What the ledger changes of an answer: a sentence to add and a check, for the first claim that stands alone and not as one of `asked`. Nothing where there is none. */
export function amongQuestions(
  claims: readonly Estimate[],
  asked: number,
): { readonly sentence: string; readonly checks: readonly Check[] } {
  if (asked <= 1) return { sentence: "", checks: [] };
  const alone = claims.filter((claim) => directionOf(claim) !== 0);
  const fallen = alone.find((claim) => directionAmong(claim, asked) === 0);
  const shown = fallen ?? alone[0];
  if (!shown) return { sentence: "", checks: [] };
  const told = intervalInWords(intervalAmong(shown, asked));
  const check: Check = {
    id: "one-of-many-questions",
    name: "one of many questions",
    value: asked,
    passed: fallen === undefined,
    sentence: `As one of ${asked} questions asked of these records the interval of the ${shown.name} is ${told}.`,
  };
  return {
    sentence: fallen ? ` ${notAmong(asked)}` : "",
    checks: [check],
  };
}

// Whether a number lies where an input's record says that it may, and that place in words.
import type { InputSpec } from "./method.ts";

type Domain = Pick<InputSpec, "above" | "atLeast" | "below" | "atMost" | "whole">;

/** Whether a number, in coherent SI, lies within the domain of an input. NaN lies in none. */
export const isWithinDomain = (value: number, { above, atLeast, below, atMost, whole }: Domain): boolean =>
  !Number.isNaN(value) &&
  (above === undefined || value > above) &&
  (atLeast === undefined || value >= atLeast) &&
  (below === undefined || value < below) &&
  (atMost === undefined || value <= atMost) &&
  (!whole || Number.isInteger(value));

/** A domain in words: "a value above 0 and below 1", "a whole number of 1 or more". */
export function domainInWords({ above, atLeast, below, atMost, whole }: Domain): string {
  const lower = above !== undefined ? `above ${above}` : atLeast !== undefined ? `of ${atLeast} or more` : "";
  const upper = below !== undefined ? `below ${below}` : atMost !== undefined ? `of at most ${atMost}` : "";
  const limits = [lower, upper].filter((part) => part !== "").join(" and ");
  const noun = whole ? "a whole number" : limits === "" ? "a number" : "a value";
  return limits === "" ? noun : `${noun} ${limits}`;
}

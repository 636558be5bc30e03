import type { Verdict } from "../../base/index.ts";
import { recordsToSettle } from "../records-to-settle.ts";
import { verdictFromInterval } from "../verdict-from-interval.ts";

/** An estimate with its interval, turned so that the rule claims "at least `bound`"; all in one unit. */
export type SignedInterval = { readonly value: number; readonly low: number; readonly high: number };

/** Verdict on a claim of "at least `bound`", and how many records more would settle it if it stays open. */
export function judgedInterval(
  interval: SignedInterval,
  bound: number,
  used: number,
): { readonly verdict: Verdict; readonly more: number | null } {
  const verdict = verdictFromInterval(interval.low, interval.high, bound);
  const halfWidth = (interval.high - interval.low) / 2;
  const more = verdict === "cannot-tell" ? recordsToSettle(used, halfWidth, Math.abs(interval.value - bound)) : null;
  return { verdict, more };
}

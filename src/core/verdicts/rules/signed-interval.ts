import type { Verdict } from "../../base/index.ts";
import { recordsToSettle } from "../records-to-settle.ts";
import { verdictFromInterval } from "../verdict-from-interval.ts";

/** An estimate with its interval, turned so that the rule claims "at least `bound`"; all in one unit. */
export type SignedInterval = { readonly value: number; readonly low: number; readonly high: number };

/** What an interval says of a claim: as one of all questions asked, and taken alone; and how many records more would settle it. */
export type JudgedInterval = { readonly verdict: Verdict; readonly alone: Verdict; readonly more: number | null };

/** Verdict on a claim of "at least `bound`" by the interval `among` all questions, beside that of the interval `alone`; `more` records would settle it if it stays open. */
export function judgedInterval(
  alone: SignedInterval,
  among: SignedInterval,
  bound: number,
  used: number,
): JudgedInterval {
  const verdict = verdictFromInterval(among.low, among.high, bound);
  const halfWidth = (among.high - among.low) / 2;
  const more = verdict === "cannot-tell" ? recordsToSettle(used, halfWidth, Math.abs(among.value - bound)) : null;
  return { verdict, alone: verdictFromInterval(alone.low, alone.high, bound), more };
}

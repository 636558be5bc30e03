// The sentence of a verdict: the word first, then what the records show, then what it would take.
import type { Verdict } from "../base/index.ts";
import { notAmong } from "../questions/index.ts";
import type { Judgement } from "./judgement.ts";

export const verdictWords: { readonly [V in Verdict]: string } = {
  kept: "Kept",
  broken: "Broken",
  "cannot-tell": "Can't tell yet",
};

export type VerdictParts = {
  readonly verdict: Verdict;
  readonly ruleWords: string;
  /** What the records that test the rule show. */
  readonly test: Judgement | null;
  /** Why there is no test, as a sentence. */
  readonly noTest: string | null;
  /** What the records from before it was stated show; null when the rule has no date. */
  readonly earlier: Judgement | null;
  readonly statedText: string | null;
  /** How many questions were asked of these records, this one included. */
  readonly asked: number;
};

const needed = (more: number) =>
  more === 1 ? "About one more like these would tell." : `About ${more} more like these would tell.`;

export function verdictSentence(parts: VerdictParts): string {
  const since = parts.statedText === null ? "" : `since it was stated (${parts.statedText}), `;
  const shown = `${since}${parts.test ? parts.test.shows : (parts.noTest ?? "").replace(/\.$/, "").replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase())}`;
  const lines = [`${verdictWords[parts.verdict]}: ${shown}.`];
  const isOneOfMany = parts.verdict === "cannot-tell" && (parts.test?.alone ?? "cannot-tell") !== "cannot-tell";
  if (isOneOfMany) lines.push(notAmong(parts.asked));
  if (parts.verdict === "cannot-tell" && parts.test?.more) lines.push(needed(parts.test.more));
  else if (parts.verdict === "cannot-tell" && parts.test && !isOneOfMany)
    lines.push("The records stand so near the line that more of the same would hardly settle it.");
  if (parts.earlier && parts.statedText !== null) lines.push(`In the records up to then, ${parts.earlier.shows}.`);
  return lines.join(" ");
}

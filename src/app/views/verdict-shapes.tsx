// The shapes of verdicts, all in this file and taken from the trade: a glue joint that closed, one that opened, a pencilled line.
import type { Verdict } from "../../core/base/index.ts";

const PATHS: { readonly [V in Verdict]: readonly { readonly d: string; readonly dash?: string }[] } = {
  kept: [{ d: "M3 4H37V11H3Z" }, { d: "M3 11H37V18H3Z" }],
  broken: [{ d: "M3 2H37V8L3 4Z" }, { d: "M3 20H37V14L3 18Z" }],
  "cannot-tell": [{ d: "M3 11H37", dash: "5 4" }],
};

/** The shape beside a verdict's word; said by the word, so hidden from screen readers. */
export const VerdictShapes = ({ verdict }: { readonly verdict: Verdict }) => (
  <svg class="verdict-shape" viewBox="0 0 40 22" width="40" height="22" aria-hidden="true" focusable="false">
    {PATHS[verdict].map(({ d, dash }) => (
      <path
        key={d}
        d={d}
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linejoin="round"
        {...(dash ? { "stroke-dasharray": dash } : {})}
      />
    ))}
  </svg>
);

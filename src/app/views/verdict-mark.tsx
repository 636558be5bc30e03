import type { Verdict } from "../../core/base/index.ts";
import { VerdictShapes } from "./verdict-shapes.tsx";

const WORDS: { readonly [V in Verdict]: string } = { kept: "Kept", broken: "Broken", "cannot-tell": "Can’t tell yet" };

/** A verdict: a word and a shape. */
export const VerdictMark = ({ verdict }: { readonly verdict: Verdict }) => (
  <p class="verdict-mark" data-verdict={verdict}>
    <VerdictShapes verdict={verdict} /> <strong>{WORDS[verdict]}</strong>
  </p>
);

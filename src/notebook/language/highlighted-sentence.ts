// The colours of a body as stretches, for whoever draws them.
import { type Highlighter, highlightTree } from "@lezer/highlight";
import { entryForms, isEntryKindId } from "./entry-forms.ts";
import { logicalLines } from "./logical-lines.ts";
import { sentenceTree } from "./sentence-parser.ts";

/** A stretch of the body and the classes of its colour. */
export type HighlightedStretch = { readonly from: number; readonly to: number; readonly classes: string };

/** Longer bodies go without colours: mending what is not understood in them takes too long. */
const LONGEST = 20_000;

/** The stretches of a body that have a colour, in order. kind: any word; an unknown one gives none. */
export function highlightedSentence(
  kind: string,
  body: string,
  highlighter: Highlighter,
): readonly HighlightedStretch[] {
  if (!isEntryKindId(kind) || body.length > LONGEST) return [];
  const found: HighlightedStretch[] = [];
  const parts = entryForms[kind].byLine ? logicalLines(body) : [{ from: 0, text: body }];
  for (const { from: base, text } of parts)
    highlightTree(
      sentenceTree(kind, text),
      highlighter,
      (from, to, classes) => void found.push({ from: base + from, to: base + to, classes }),
    );
  return found;
}

// The colours of a sentence, out of the grammar that the checker reads it with: words by weight, amounts and units by ink.
import type { Extension } from "@codemirror/state";
import { Decoration, type DecorationSet, EditorView, ViewPlugin, type ViewUpdate } from "@codemirror/view";
import { tagHighlighter, tags } from "@lezer/highlight";
import { highlightedSentence } from "../../notebook/language/index.ts";

const classes = tagHighlighter([
  { tag: tags.keyword, class: "said" },
  { tag: [tags.number, tags.unit, tags.literal], class: "amount" },
  { tag: tags.function(tags.variableName), class: "called" },
  { tag: tags.string, class: "quoted" },
]);

const look = EditorView.baseTheme({
  ".said": { fontWeight: "700" },
  ".amount": { color: "var(--group-2)" },
  ".called": { color: "var(--group-1)" },
  ".quoted": { fontStyle: "italic" },
});

function coloured(kind: string, view: EditorView): DecorationSet {
  const stretches = highlightedSentence(kind, view.state.doc.toString(), classes);
  return Decoration.set(
    stretches
      .filter(({ from, to }) => from < to)
      .map(({ from, to, classes: name }) => Decoration.mark({ class: name }).range(from, to)),
  );
}

/** Colours for a kind of entry. */
export function sentenceColours(kind: string): Extension {
  const plugin = ViewPlugin.define(
    (view) => ({
      decorations: coloured(kind, view),
      update(update: ViewUpdate) {
        if (update.docChanged) this.decorations = coloured(kind, update.view);
      },
    }),
    { decorations: (value) => value.decorations },
  );
  return [plugin, look];
}

// Completion while a sentence is written: what the grammar takes at the place, out of the catalogues that run.
import type { CompletionContext, CompletionResult } from "@codemirror/autocomplete";
import { EditorState, type Extension } from "@codemirror/state";
import { functionCatalogue, groupFunctions } from "../../core/formula/index.ts";
import { questionMethods } from "../../core/questions/index.ts";
import { unitCatalogue } from "../../core/units/index.ts";
import { type Completion, type CompletionNames, completionsAt } from "../../notebook/language/index.ts";

const shownAs: { readonly [K in Completion["is"]]: string } = {
  word: "keyword",
  column: "variable",
  function: "function",
  method: "constant",
  unit: "type",
  table: "namespace",
};

const catalogued = {
  functions: [...functionCatalogue, ...groupFunctions].map((each) => each.id),
  methods: questionMethods.map((method) => method.id),
  units: unitCatalogue.flatMap((unit) => unit.spellings[0] ?? unit.code),
};

/** Completion for a kind of entry. `names`: the columns and entries that exist. */
export function sentenceLanguage(kind: string, names: readonly string[]): Extension {
  const offered: CompletionNames = { ...catalogued, columns: names, tables: names };
  const complete = (context: CompletionContext): CompletionResult | null => {
    const found = completionsAt(context.state.doc.toString(), kind, context.pos, offered);
    if (found.length === 0) return null;
    const from = Math.max(...found.map((each) => each.from));
    const begun = context.state.sliceDoc(from, context.pos) !== "";
    if (!begun && !context.explicit) return null;
    return {
      from,
      options: found.filter((each) => each.from === from).map(({ label, is }) => ({ label, type: shownAs[is] })),
    };
  };
  return EditorState.languageData.of(() => [{ autocomplete: complete }]);
}

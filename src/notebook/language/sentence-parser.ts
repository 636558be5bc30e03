// The one grammar, with the top rule of a kind of entry chosen.
import type { Tree } from "@lezer/common";
import type { LRParser } from "@lezer/lr";
import { entryForms } from "./entry-forms.ts";
import type { EntryKindId } from "./entry-syntax.ts";
import { parser } from "./sentence.grammar";
import { sentenceHighlighting } from "./sentence-highlighting.ts";

const parsers = new Map<string, LRParser>(
  Object.values(entryForms).map(({ top }) => [top, parser.configure({ top, props: [sentenceHighlighting] })]),
);

/** The parser of a kind: of the whole body, or of one line where a kind is written a line at a time. */
export const sentenceParser = (kind: EntryKindId): LRParser => parsers.get(entryForms[kind].top) ?? parser;

/** The tree of a body, or of one line. Never throws; what is not understood is an error node. */
export const sentenceTree = (kind: EntryKindId, text: string): Tree => sentenceParser(kind).parse(text);

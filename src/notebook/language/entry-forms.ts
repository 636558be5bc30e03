// The kinds of entry, as written on the fence.
import type { EntryKindId } from "./entry-syntax.ts";

/** Which top rule of the grammar reads it; `byLine` if each line is a sentence of its own. */
export const entryForms: { readonly [K in EntryKindId]: { readonly top: string; readonly byLine: boolean } } = {
  records: { top: "RecordsLine", byLine: true },
  columns: { top: "ColumnLine", byLine: true },
  value: { top: "ValueEntry", byLine: false },
  dial: { top: "DialEntry", byLine: false },
  question: { top: "QuestionEntry", byLine: false },
  rule: { top: "RuleEntry", byLine: false },
  rig: { top: "RigEntry", byLine: false },
  picture: { top: "PictureEntry", byLine: false },
  lexicon: { top: "LexiconLine", byLine: true },
  use: { top: "UseEntry", byLine: false },
  setting: { top: "SettingLine", byLine: true },
};

/** Every kind, in the order in which the words page tells of them. */
export const entryKindIds = Object.keys(entryForms) as readonly EntryKindId[];

/** Whether a word on a fence is a kind of entry. */
export const isEntryKindId = (word: string): word is EntryKindId => Object.hasOwn(entryForms, word);

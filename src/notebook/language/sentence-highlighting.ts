// What each part of a sentence is, for colours.
import { styleTags, tags } from "@lezer/highlight";
import { phrases } from "./phrases.ts";

/** Tags by the nodes of the grammar. */
export const sentenceHighlighting = styleTags({
  [[...new Set(phrases.map(({ term }) => term))].join(" ")]: tags.keyword,
  "Name EntryName": tags.variableName,
  "Call/Name GroupName MethodName": tags.function(tags.variableName),
  "Number Uncertainty/Number": tags.number,
  Unit: tags.unit,
  "Date StatedDate": tags.literal,
  "Text Label Piece File LexiconWord": tags.string,
  "Plus Minus Times Divide Power PlusMinus": tags.arithmeticOperator,
  "Equal NotEqual LessEqual MoreEqual Less More": tags.compareOperator,
  "( )": tags.paren,
});

// What a field is while the table's shape is still sought: nothing, a number or date, a missing word, or a word.
import { dateParts } from "../readers/date-parts.ts";
import { field } from "../readers/field.ts";
import { gradeParts } from "../readers/grade-parts.ts";
import { pitchParts } from "../readers/pitch-parts.ts";
import { quantityDraft } from "../readers/quantity-draft.ts";
import { specialWords } from "../readers/special-words.ts";

export type FieldSort = "empty" | "missing" | "number" | "date" | "word";

/** The sort of a raw field. */
export function fieldSort(raw: string): FieldSort {
  const { text } = field(raw);
  if (text === "") return "empty";
  if (specialWords(text) !== null) return "missing";
  const parts = dateParts(text).form;
  if (parts === "day" || parts === "month" || parts === "order") return "date";
  return quantityDraft(text, null).form === "none" ? "word" : "number";
}

/** Whether a raw field is a value of any kind but words: number, date, grade, or pitch with its octave. */
export function isValue(raw: string): boolean {
  const sort = fieldSort(raw);
  return sort === "number" || sort === "date" || isGradeOrPitch(raw);
}

/** Whether a raw field reads as a grade or as a pitch with its octave. */
export function isGradeOrPitch(raw: string): boolean {
  const { text } = field(raw);
  if (text === "") return false;
  const parts = gradeParts(text);
  return (parts !== null && parts.sort !== "letters") || (pitchParts(text)?.octave ?? "") !== "";
}

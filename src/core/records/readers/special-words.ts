// Cells that say nothing, point upwards, or carry a spreadsheet's error, in whichever column they stand.
const BLANK = new Set([
  "",
  "n/a",
  "na",
  "n.a.",
  "n.d.",
  "nd",
  "nan",
  "null",
  "-",
  "–",
  "—",
  "--",
  "---",
  "?",
  "??",
  ".",
  "…",
  "...",
  "tbd",
  "t.b.d.",
  "todo",
  "not measured",
  "not recorded",
  "missing",
  "k.a.",
  "keine angabe",
  "nicht gemessen",
  "s/d",
  "sin dato",
  "no medido",
  "non mesuré",
]);
const MAYBE_BLANK = new Set(["none", "nil", "unknown"]);
const DITTO = new Set(["〃", "''", "do.", "dto.", "idem", "ditto"]);
const ERRORS = new Set(["#DIV/0!", "#N/A", "#REF!", "#VALUE!", "#NAME?", "#NUM!", "#NULL!"]);

/** What a cell is in every column: a missing word, one that is missing except among words, a ditto, a sheet's error, or none of these. */
export function specialWords(text: string): "blank" | "maybe-blank" | "ditto" | "sheet-error" | null {
  if (text.length > 16) return null;
  const lower = text.toLowerCase();
  if (BLANK.has(lower)) return "blank";
  if (MAYBE_BLANK.has(lower)) return "maybe-blank";
  if (DITTO.has(lower)) return "ditto";
  return ERRORS.has(text) || /^Err:\d{3}$/.test(text) ? "sheet-error" : null;
}

/** Whether a sheet would run the text: it begins with = or @, or with a sign right before a letter or bracket. */
export const isFormulaLike = (text: string): boolean => /^(?:[=@]|[+-][\p{L}(])/u.test(text);

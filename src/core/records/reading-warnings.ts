// The catalogue of reading codes: what is so, what to do. Sentences stand here and nowhere else.
import { limits } from "../base/index.ts";

const over = (limit: { readonly value: number; readonly words: string }) =>
  `The limit of ${limit.value} for ${limit.words} is exceeded, so nothing was read. Part the file.`;

const aboutFiles = {
  "encoding-guessed":
    "The file does not say how its letters are stored, so that was guessed. Look at the accents, and say the encoding if they are wrong.",
  "empty-file": "There are no records in the file. Put a heading and at least one record in it.",
  "not-a-table": "This is not a table of text. Save it as CSV or tab-separated text.",
  "old-workbook":
    "This is a workbook of the old kind (.xls), or one locked by a password. Save it as .xlsx or CSV, without a password.",
  "locked-workbook": "The workbook is locked by a password. Save it without one, or as CSV.",
  "broken-workbook": "The workbook is damaged, or only a part of it is there. Save it once more, or save it as CSV.",
  "unsafe-workbook":
    "The workbook points outside itself or brings a document type of its own, and neither is followed. Save it once more in a spreadsheet program.",
  "no-header": "The first record holds values, so the columns have no names. Put a heading above them.",
  "no-rows": "There is a heading and nothing beneath it. Add a record.",
  "file-too-large": over(limits.tableBytes),
  "workbook-too-large": over(limits.unpackedBytes),
  "part-too-large": over(limits.partBytes),
  "too-many-parts": over(limits.workbookParts),
  "workbook-too-full": over(limits.workbookCells),
  "too-many-rows": over(limits.rows),
  "too-many-columns": over(limits.columns),
  "too-many-cells": over(limits.cells),
  "cell-too-long": over(limits.cellCharacters),
} as const;

const aboutColumns = {
  "duplicate-column": "Another column has the same name, so this one got a number. Give it a name of its own.",
  "unnamed-column": "This column has values and no name. Name it in the heading.",
  "unknown-unit": "The unit is not known, so nothing was read in it. Write it as in the list of units.",
  "mixed-units": "The cells are in several units; each keeps its own. Check that this is meant.",
  "mixed-decimal-marks":
    "Both the point and the comma stand for the decimal mark here. Cells that can be read two ways were left out; correct them.",
  "decimal-from-other-columns":
    "Nothing in this column shows which mark is decimal; the other columns decided. Say the decimal mark if that is wrong.",
  "mixed-date-orders":
    "Some dates have the day first and some the month. Dates that can be read two ways were left out; correct them.",
  "mixed-scales": "The grades are on several scales; each keeps its own. Check that this is meant.",
  "spelling-varies": "Two spellings differ only by case, accents, spaces or hyphens. Say whether they mean the same.",
  "hidden-column": "The column is hidden in the sheet. Check that it belongs to the records.",
} as const;

const aboutRows = {
  "short-row": "The record has too few fields; the last ones count as not measured. Check that nothing slipped.",
  "long-row": "The record has more fields than the heading. Check for a separator inside a field.",
  "duplicate-row": "The same record stands above. Remove one, or keep both if they are two measurements.",
  "hidden-row": "The row is hidden in the sheet. Check that it belongs to the records.",
} as const;

const aboutCells = {
  "bad-character": "A character could not be decoded. Say the encoding of the file, or type it again.",
  "nul-removed": "A character without meaning (NUL) was left out of the reading. Check the cell.",
  "stray-quote": "There is text after the closing quotation mark; it was kept. Check the cell.",
  "unclosed-quote": "A quotation mark is never closed and was taken as an ordinary character. Check the cell.",
  "sheet-error": "The sheet had an error here in place of a value. Correct it in the sheet.",
  ditto: 'A sign for "as above" is not copied down. Write the value.',
  "formula-without-value":
    "The sheet stored a formula and no result. Open and save it once in the sheet's own program.",
  "formula-like": "The text begins like a formula. It is kept as text and never computed.",
  "ambiguous-number": "This can be read two ways, as thousands or as decimals. Say which mark is decimal.",
  "unreadable-number": "This is not a number. Correct the cell.",
  "letter-in-number": "A letter stands where a digit should, such as O for 0. Correct the cell.",
  "fraction-without-inch": "A fraction in a column of another unit. Add an inch mark if inches are meant.",
  "date-in-number-column":
    "A date in a column of numbers, likely a fraction that a spreadsheet turned. Write the fraction again.",
  "unknown-unit": "The unit is not known, so the cell was not read. Write it as in the list of units.",
  "unit-differs": "The cell has another unit than the column; the cell's holds. Check that this is meant.",
  "unit-missing": "Other cells have a unit and this one has none. Add it.",
  range: "A range was read as its middle, with half its width as uncertainty. Check that this is meant.",
  "below-limit": "The true value is below this one. It counts as the limit.",
  "above-limit": "The true value is above this one. It counts as the limit.",
  approximate: "The value is marked as approximate.",
  doubtful: "The value is marked as doubtful. Measure again if you can.",
  "footnote-mark": "The value points to a footnote. Read what it says.",
  "maybe-missing-number": 'This number often stands for "missing". Empty the cell if it does.',
  "number-as-text": "A number was stored as text. It was read as a number.",
  "two-digit-year": "The year has two digits; 00 to 49 were taken for this century. Write all four.",
  "partial-date": "The date is only a month or a year. Complete it if you know the day.",
  "serial-date": "A spreadsheet's day number was read as a date. Check it.",
  "date-in-words": "The date is in words and was kept as text. Write a date if you know it.",
  "ambiguous-date": "This can be read with the day or the month first. Say which.",
  "unreadable-date": "This is not a date, or there is no such day. Correct the cell.",
  "german-note-name": "H shows German note names, in which B is another note. Say which names are used.",
  "octave-missing": "The note has no octave. Add its number.",
  "unreadable-pitch": "This is not a pitch. Write it like G#2, or as a frequency in Hz.",
  "scale-assumed": "The scale of the other grades was assumed. Write it if it differs.",
  "unreadable-grade": "This is not a grade on a scale used here. Correct the cell.",
  "unreadable-yes-no": "This is neither yes nor no. Correct the cell.",
  "hidden-characters": "Invisible characters were left out of the reading.",
  "merged-cell": "The value comes from the merged cell above.",
  "repeated-id": "The same name stands on a record above. Check that they are two pieces.",
  "precision-lost": "The number has more digits than a sheet keeps. Enter it as text.",
  "id-as-scientific": "A sheet has turned a long number into a short form, and digits are lost. Enter it as text.",
} as const;

const aboutSetAside = {
  "sep-line": "The first line says which character parts the fields.",
  "rule-line": "A drawn line beneath the heading.",
  comment: "A comment.",
  preamble: "A line above the heading.",
  "units-row": "The row of units beneath the heading.",
  "header-repeated": "The heading again.",
  "total-row": "A total or a mean; it is no record.",
  footnote: "A footnote beneath the records.",
  "hidden-sheet": "The sheet is hidden and was not read.",
} as const;

export type ReadingCode =
  | keyof typeof aboutFiles
  | keyof typeof aboutColumns
  | keyof typeof aboutRows
  | keyof typeof aboutCells
  | keyof typeof aboutSetAside;

/** Code -> sentence. */
export const readingWarnings: ReadonlyMap<string, string> = new Map<ReadingCode, string>(
  [aboutFiles, aboutColumns, aboutRows, aboutCells, aboutSetAside].flatMap(
    (part) => Object.entries(part) as [ReadingCode, string][],
  ),
);

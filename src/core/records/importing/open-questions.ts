// What the maker is asked about a file, each question once, and what each answer would make of a cell in question.
import { codeAt, kindAt, rawAt } from "../cells.ts";
import type { ReadOptions } from "../read-options.ts";
import type { ReadResult, RecordColumn } from "../read-result.ts";
import { readTable } from "../read-table.ts";
import { type Asker, choice, listed, quoted } from "./asker.ts";
import { encodingQuestion } from "./encoding-question.ts";
import type { ImportQuestion } from "./import-reading.ts";
import { readAs } from "./read-as.ts";
import { spellingQuestions } from "./spelling-questions.ts";

type InQuestion = { readonly column: RecordColumn; readonly raws: readonly string[] };

const SAMPLES = 3;

/** A column with the first few different raw texts of some of its rows; nothing where it has none. */
function rawsOf(column: RecordColumn, isMeant: (row: number) => boolean): readonly InQuestion[] {
  const raws = new Set<string>();
  for (let row = 0; row < column.cells.length && raws.size < SAMPLES; row++)
    if (isMeant(row)) raws.add(rawAt(column.cells, row).trim());
  return raws.size > 0 ? [{ column, raws: [...raws] }] : [];
}

/** Columns with cells of the code, and the first few different raw texts of those cells. */
function inQuestion({ tables }: ReadResult, code: string): readonly InQuestion[] {
  return tables.flatMap(({ columns }) =>
    columns.flatMap((column) => {
      if (!column.cells.codes.includes(code)) return [];
      return rawsOf(column, (row) => codeAt(column.cells, row) === code);
    }),
  );
}

const namesOf = (found: readonly InQuestion[]) => [...new Set(found.map(({ column }) => column.name))];

/** "1,234 is 1234 g, 2,310 is 2310 g", as the reader would read them. */
const readings = (raws: readonly string[], heading: string, options: ReadOptions) =>
  raws.map((raw) => `${raw} is ${readAs(raw, heading, options)}`).join(", ");

/** What an answer about the decimal mark would take away: " Then 3 cells of “Thickness” cannot be read." A workbook's text is not read again for it. */
function lostIn({ tables, file }: ReadResult, bytes: Uint8Array, options: ReadOptions): string {
  const after = readTable(bytes, file, options).tables;
  const lost = tables.flatMap(({ columns }, table) =>
    columns.flatMap(({ name, cells }, at) => {
      const then = after[table]?.columns[at]?.cells;
      if (then?.length !== cells.length) return [];
      let count = 0;
      for (let row = 0; row < cells.length; row++)
        if (kindAt(then, row) === "unreadable" && kindAt(cells, row) !== "unreadable") count++;
      return count === 0 ? [] : [`${count} ${count === 1 ? "cell" : "cells"} of ${quoted(name)}`];
    }),
  );
  return lost.length === 0 ? "" : `. Then ${listed(lost)} cannot be read`;
}

/** Columns that the other columns decided for, with cells that a mark stands in. */
const decidedByOthers = ({ tables, warnings }: ReadResult): readonly InQuestion[] =>
  warnings
    .filter(({ code }) => code === "decimal-from-other-columns")
    .flatMap(({ table = 1, col = 0 }) => {
      const column = tables[table - 1]?.columns[col - 1];
      return column === undefined ? [] : rawsOf(column, (row) => /[.,]/.test(rawAt(column.cells, row)));
    });

const decimal: Asker = (result, options, bytes) => {
  const unread = inQuestion(result, "ambiguous-number");
  const found = unread.length > 0 ? unread : decidedByOthers(result);
  const [first] = found;
  if (first === undefined || options.decimal !== undefined) return [];
  const { unit } = first.column;
  const heading = unit === null ? "amount" : `amount (${unit})`;
  const each = (label: string, read: ReadOptions) => {
    const then = { ...options, ...read };
    return choice(`${label}: ${readings(first.raws, heading, then)}${lostIn(result, bytes, then)}`, read);
  };
  const names = listed(namesOf(found).map(quoted));
  return [
    {
      id: "decimal",
      code: unread.length > 0 ? "ambiguous-number" : "decimal-from-other-columns",
      sentence:
        unread.length > 0
          ? `Which mark is decimal? Numbers in ${names} can be read two ways.`
          : `Which mark is decimal? Nothing in ${names} shows it; it is read as in the other columns.`,
      columns: namesOf(found),
      choices: [each("The comma", { decimal: "," }), each("The point", { decimal: "." })],
    },
  ];
};

const dayFirst: Asker = (result, options) => {
  const found = inQuestion(result, "ambiguous-date");
  const [first] = found;
  if (first === undefined || options.dayFirst !== undefined) return [];
  const each = (label: string, read: ReadOptions) =>
    choice(`${label}: ${readings(first.raws, "date", { ...options, ...read })}`, read);
  return [
    {
      id: "day-first",
      code: "ambiguous-date",
      sentence: `Which comes first, the day or the month? Dates in ${listed(namesOf(found).map(quoted))} can be read two ways.`,
      columns: namesOf(found),
      choices: [each("The day", { dayFirst: true }), each("The month", { dayFirst: false })],
    },
  ];
};

const noteNames: Asker = (result, options) => {
  const found = inQuestion(result, "german-note-name");
  const [first] = found;
  if (first === undefined || options.noteNames !== undefined) return [];
  const each = (label: string, read: ReadOptions) =>
    choice(`${label}: ${readings(first.raws, "pitch", { ...options, ...read })}`, read);
  return [
    {
      id: "note-names",
      code: "german-note-name",
      sentence: `Whose note names are these? There is an H in ${listed(namesOf(found).map(quoted))}, and where H is used, B is another note.`,
      columns: namesOf(found),
      choices: [each("German", { noteNames: "german" }), each("English", { noteNames: "english" })],
    },
  ];
};

const askers: readonly Asker[] = [encodingQuestion, decimal, dayFirst, noteNames, spellingQuestions];

/** Every question that is open about a reading. bytes: of the file; options: what it was read with. */
export const openQuestions = (result: ReadResult, options: ReadOptions, bytes: Uint8Array): readonly ImportQuestion[] =>
  askers.flatMap((ask) => ask(result, options, bytes));

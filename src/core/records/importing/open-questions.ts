// What the maker is asked about a file, each question once, and what each answer would make of a cell in question.
import { codeAt, kindAt, rawAt } from "../cells.ts";
import type { ReadOptions } from "../read-options.ts";
import type { ReadResult, RecordColumn } from "../read-result.ts";
import { readTable } from "../read-table.ts";
import { sourceText } from "../source/source-text.ts";
import type { ImportChoice, ImportQuestion } from "./import-reading.ts";
import { readAs } from "./read-as.ts";
import { spellingClusters } from "./spelling-clusters.ts";

type Asker = (result: ReadResult, options: ReadOptions, bytes: Uint8Array) => readonly ImportQuestion[];
type InQuestion = { readonly column: RecordColumn; readonly raws: readonly string[] };

const SAMPLES = 3;
const MOST_CLUSTERS = 50;
const quoted = (text: string) => `“${text}”`;
const listed = (texts: readonly string[]) =>
  texts.length < 2 ? texts.join("") : `${texts.slice(0, -1).join(", ")} and ${texts.at(-1)}`;
const choice = (label: string, read: ReadOptions): ImportChoice => ({ label, answers: { read } });

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

const ENCODINGS = new Map([
  ["windows-1252", "Western European (Windows-1252)"],
  ["utf-8", "UTF-8"],
  ["utf-16le", "UTF-16, low byte first"],
  ["utf-16be", "UTF-16, high byte first"],
]);
const PROBE = 64 * 1024;
const AROUND = 24;

/** The words around the first letter beyond ASCII, or the beginning. */
function excerpt(text: string): string {
  const at = Math.max(0, text.search(/[^\t\n\r -~]/));
  const line = text.slice(text.lastIndexOf("\n", at) + 1).split(/[\r\n]/, 1)[0] ?? "";
  const place = at - text.lastIndexOf("\n", at) - 1;
  return line.slice(Math.max(0, place - AROUND), place + AROUND).trim();
}

const encoding: Asker = ({ warnings }, options, bytes) => {
  if (options.encoding !== undefined || !warnings.some(({ code }) => code === "encoding-guessed")) return [];
  const guess = sourceText(bytes).encoding;
  const head = bytes.subarray(0, PROBE);
  // Half of a file in one-byte letters is no text at all in two-byte ones: only its likes are offered.
  const wide = guess.startsWith("utf-16");
  const others = [...ENCODINGS.keys()].filter((name) => name !== guess && name.startsWith("utf-16") === wide);
  return [
    {
      id: "encoding",
      code: "encoding-guessed",
      sentence: "Are the letters right? The file does not say how they are stored.",
      columns: [],
      choices: [guess, ...others].map((name) =>
        choice(`${ENCODINGS.get(name)}: ${excerpt(sourceText(head, name).text)}`, { encoding: name }),
      ),
    },
  ];
};

const aliasKey = (text: string) => text.trim().split(/\s+/u).join(" ").toLowerCase();
const aliasesFor = (column: string, pairs: readonly (readonly [string, string])[]): ReadOptions => ({
  aliases: Object.fromEntries([[column, Object.fromEntries(pairs)]]),
});

/** Spellings of one column: one question for each set of them. */
const spellings: Asker = ({ tables, warnings }) =>
  warnings
    .filter(({ code }) => code === "spelling-varies")
    .flatMap(({ table = 1, col = 0 }) => {
      const column = tables[table - 1]?.columns[col - 1];
      if (column === undefined) return [];
      return spellingClusters(column).map((cluster) => {
        const texts = cluster.map(({ text }) => text);
        const told = new Set(texts.map(aliasKey)).size === texts.length;
        const same = texts.map((name) =>
          choice(
            `They all mean ${quoted(name)}`,
            aliasesFor(
              column.name,
              texts.map((text) => [text, name]),
            ),
          ),
        );
        // Spellings that differ by case alone cannot be told apart by aliases, so only one name can be chosen.
        const apart = choice(
          "They are different things",
          aliasesFor(
            column.name,
            texts.map((text) => [text, text]),
          ),
        );
        return {
          id: `spelling ${JSON.stringify([column.name, ...[...texts].sort()])}`,
          code: "spelling-varies",
          sentence: `Do these mean the same in ${quoted(column.name)}? ${listed(
            cluster.map(({ text, count }) => `${quoted(text)} (${count} ${count === 1 ? "record" : "records"})`),
          )}.`,
          columns: [column.name],
          choices: told ? [...same, apart] : same,
        };
      });
    })
    .slice(0, MOST_CLUSTERS);

const askers: readonly Asker[] = [encoding, decimal, dayFirst, noteNames, spellings];

/** Every question that is open about a reading. bytes: of the file; options: what it was read with. */
export const openQuestions = (result: ReadResult, options: ReadOptions, bytes: Uint8Array): readonly ImportQuestion[] =>
  askers.flatMap((ask) => ask(result, options, bytes));

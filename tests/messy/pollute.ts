// A clean table and a seed in, an untidy file and its one right reading out. Same seed, same bytes.
// Not made here: anything ambiguous, unclosed quotes, several tables, sheets; those are written by hand in files/.
import { type CleanTable, type Dice, dice } from "./clean-table.ts";
import { messyCell, plainDate, type Style, written } from "./messy-cell.ts";
import {
  blank,
  date,
  type Encoding,
  type Expected,
  grade,
  pitch,
  quantity,
  type Stated,
  statedFile,
  text,
} from "./stated-file.ts";

const ASCII = /^[\x20-\x7e]*$/;
const fits1252 = (content: string) =>
  [...content].every((char) => {
    const code = char.codePointAt(0) ?? 0;
    return code < 0x80 || (code >= 0xa0 && code < 0x100) || "€–—“”’•…".includes(char);
  });

/** A column is decided by evidence, so the evidence must be there: the first four cells of a typed column stay plain and sure. */
function sureCell(table: CleanTable, row: number, col: number, style: Style): Stated | null {
  const value = table.rows[row]?.[col] ?? "";
  const kind = table.columns[col]?.kind;
  if (kind === "quantity") {
    const sure = Math.floor(Number(value)) + 0.5;
    return quantity(written(sure, style), sure);
  }
  if (kind === "date" && style.date !== "iso") {
    const iso = `2023-0${row + 1}-2${row + 3}`;
    return date(plainDate(iso, style), iso);
  }
  if (kind === "grade") return grade(`${value}/5`, Number(value), "/5");
  if (kind === "pitch") return pitch(String(value), String(value));
  return kind === "yes-no" ? text(String(value)) : null;
}

const KEPT_ROWS = 4;
function messyRows(table: CleanTable, style: Style, die: Dice, mess: number): Stated[][] {
  const rows = table.rows.map((values) =>
    values.map((value, col) => {
      const column = table.columns[col];
      return col === 0 || !column ? text(String(value)) : messyCell(value, column, style, die, mess);
    }),
  );
  return rows.map((cells, row) =>
    row < KEPT_ROWS ? cells.map((cell, col) => sureCell(table, row, col, style) ?? cell) : cells,
  );
}

function someEncoding(content: string, die: Dice): Encoding {
  const western: Encoding[] = fits1252(content) && !ASCII.test(content) ? ["cp1252"] : [];
  return die.pick<Encoding>(["utf8", "utf8-bom", "utf16le-bom", "utf16be-bom", ...western]);
}

const UNIT_STYLES = {
  round: (name: string, unit: string) => `${name} (${unit})`,
  square: (name: string, unit: string) => `${name} [${unit}]`,
  comma: (name: string, unit: string) => `${name}, ${unit}`,
  row: (name: string) => name,
};

/** What goes wrong around the cells; a row's place, or -1 where it does not happen. */
function mishaps(rows: number, pipes: boolean, die: Dice) {
  const place = (first: number) => (die.chance(0.3) ? first + die.below(rows - first) : -1);
  return {
    preamble: die.chance(0.4),
    comment: die.chance(0.3),
    trailing: die.chance(0.25) && !pipes ? 2 : 0,
    again: place(1),
    blankAt: place(1),
    twice: place(0),
    total: die.chance(0.3),
    foot: die.chance(0.3),
    short: place(0),
  };
}

/** The file of a seed: its bytes, and how it is to be read. `mess`: the share of cells that are touched. */
export function pollute(
  table: CleanTable,
  seed: number,
  file: string,
  mess = 0.25,
): { bytes: Uint8Array; expected: Expected } {
  const die = dice(seed);
  const delimiter = die.pick([",", ";", "\t", "|"]);
  const style: Style = {
    mark: delimiter === "," ? "." : die.pick([",", "."]),
    date: die.pick(["iso", "dots", "dmy", "mdy"]),
  };
  const unitStyle = die.pick(["round", "square", "comma", "row"] as const);
  const newline = die.pick(["\n", "\r\n", "\r"]);
  const rows = messyRows(table, style, die, mess);
  const names = table.columns.map(({ name }) => name);
  const encoding = someEncoding(
    rows
      .flat()
      .map(({ raw }) => raw)
      .join("") + names.join(""),
    die,
  );
  const happened = mishaps(rows.length, delimiter === "|", die);
  const tail = Array<string>(happened.trailing).fill("");
  const heads = table.columns.map(({ name, unit }) => (unit ? UNIT_STYLES[unitStyle](name, unit) : name));
  const units = [...table.columns.map(({ unit }) => unit ?? ""), ...tail];
  const written = { delimiter, newline, encoding, quoteAll: die.chance(0.15), noLastNewline: die.chance(0.3) };
  const build = statedFile(file, written);

  if (encoding === "cp1252") build.fileWarns("encoding-guessed");
  if (happened.preamble) {
    build.aside("preamble", ["Boards of the season"]);
    build.blank();
  }
  if (happened.comment) build.aside("comment", ["# weighed on the small balance"]);
  build.table(
    table.columns.map((column, at) => ({ head: heads[at] ?? "", ...column })),
    [...heads, ...tail],
  );
  if (unitStyle === "row") build.aside("units-row", units);
  for (const [row, cells] of rows.entries()) {
    if (row === happened.again) {
      build.aside("header-repeated", [...heads, ...tail]);
      if (unitStyle === "row") build.aside("units-row", units);
    }
    if (row === happened.blankAt) build.blank([...table.columns.map(() => ""), ...tail]);
    if (row === happened.short && tail.length === 0)
      build.row([...cells.slice(0, -1), blank()], { written: cells.length - 1, code: "short-row" });
    else build.row(cells, { tail });
    if (row === happened.twice && row !== happened.short) build.row(cells, { tail, code: "duplicate-row" });
  }
  if (happened.total) {
    const sums = table.columns.slice(1).map(({ kind }) => (kind === "quantity" ? `12${style.mark}5` : ""));
    build.aside("total-row", ["Average", ...sums, ...tail]);
  }
  if (happened.foot) {
    build.blank();
    build.aside("footnote", ["weighed after drying"]);
  }
  return build.done();
}

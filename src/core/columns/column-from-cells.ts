// One typed column out of the cells of one column of a file.

import type { Cells, DescribedColumn, RecordColumn } from "../records/index.ts";
import { kindAt, valueAt } from "../records/index.ts";
import { pitchFromText } from "../units/index.ts";
import type { Column, ColumnOrigin } from "./column.ts";
import { daysFromDate } from "./days-from-date.ts";
import { gradeFromCells } from "./grade-from-cells.ts";
import { labelsFromTexts } from "./labels-from-texts.ts";
import { quantityFromCells } from "./quantity-from-cells.ts";

type Parts = {
  readonly name: string;
  readonly header: string;
  readonly origin: ColumnOrigin;
  readonly warnings: number;
};
export type ColumnRead = { readonly column: Column; readonly otherDimension: number; readonly otherScale: number };

const WORDS_BY_NAME = /^(notes?|remarks?|comments?|words?|sound|impression|description|notas?|bemerkung(en)?)$/;

const textsOf = (cells: Cells): (string | null)[] =>
  Array.from({ length: cells.length }, (_, row) => {
    const value = valueAt(cells, row);
    return value === null ? null : String(value);
  });

/** Whether texts are notes in words and not names: called so, or mostly different and of three words or more on average. */
function isWords(name: string, texts: readonly (string | null)[]): boolean {
  const given = texts.filter((text) => text !== null);
  if (given.length === 0) return false;
  if (name.split("_").some((word) => WORDS_BY_NAME.test(word))) return given.some((text) => /[\s,;]/.test(text));
  const words = given.reduce((sum, text) => sum + text.split(/\s/).filter((word) => word !== "").length, 0);
  return words / given.length >= 3 && new Set(given).size > given.length / 2;
}

const YES = new Set(["yes", "true", "1"]);

function textColumn(parts: Parts, cells: Cells, kind: string | undefined): Column {
  const texts = textsOf(cells);
  if (kind === "words" || (kind !== "label" && kind !== "id" && isWords(parts.name, texts)))
    return { ...parts, kind: "words", texts };
  return { ...parts, kind: "label", ...labelsFromTexts(texts) };
}

function pitchColumn(parts: Parts, cells: Cells): Column {
  const frequencies = new Float64Array(cells.length).fill(Number.NaN);
  const texts = Array.from({ length: cells.length }, (_, row) => {
    const value = kindAt(cells, row) === "pitch" ? valueAt(cells, row) : null;
    if (value === null) return null;
    frequencies[row] = typeof value === "number" ? value : (pitchFromText(value)?.frequency ?? Number.NaN);
    return typeof value === "number" ? `${value} Hz` : value;
  });
  return { ...parts, kind: "pitch", frequencies, texts };
}

function dateColumn(parts: Parts, cells: Cells): Column {
  const texts = Array.from({ length: cells.length }, (_, row) => {
    const value = kindAt(cells, row) === "date" ? valueAt(cells, row) : null;
    return typeof value === "string" ? value : null;
  });
  return {
    ...parts,
    kind: "date",
    days: Float64Array.from(texts, (text) => (text === null ? Number.NaN : daysFromDate(text))),
    texts,
  };
}

/** The column, and how many of its cells count as missing although they were read: unit of another dimension, grade of another scale. */
export function columnFromCells(
  name: string,
  origin: ColumnOrigin,
  read: RecordColumn,
  said: DescribedColumn,
): ColumnRead {
  const { cells } = read;
  const parts: Parts = {
    name,
    header: read.name,
    origin,
    warnings: cells.codePlaces?.reduce((count, place) => count + (place > 0 ? 1 : 0), 0) ?? 0,
  };
  const kind = said.kind ?? read.kind;
  const nothingLost = { otherDimension: 0, otherScale: 0 };
  if (kind === "quantity") {
    const { otherDimension, ...quantity } = quantityFromCells(cells, read.unit, said);
    return { column: { ...parts, kind: "quantity", ...quantity }, otherDimension, otherScale: 0 };
  }
  if (kind === "grade") {
    const { otherScale, ...grade } = gradeFromCells(cells);
    return { column: { ...parts, kind: "grade", ...grade }, otherDimension: 0, otherScale };
  }
  if (kind === "pitch") return { column: pitchColumn(parts, cells), ...nothingLost };
  if (kind === "date") return { column: dateColumn(parts, cells), ...nothingLost };
  if (kind === "yes-no") {
    const values = Int8Array.from(textsOf(cells), (text) => (text === null ? -1 : YES.has(text.toLowerCase()) ? 1 : 0));
    return { column: { ...parts, kind: "yes-no", values }, ...nothingLost };
  }
  return { column: textColumn(parts, cells, said.kind), ...nothingLost };
}

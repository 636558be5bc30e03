// One typed column out of the cells of one column of a file.

import type { Cells, DescribedColumn, RecordColumn } from "../records/index.ts";
import { kindAt, valueAt } from "../records/index.ts";
import { pitchFromText } from "../units/index.ts";
import type { Column, ColumnOrigin } from "./column.ts";
import { daysFromDate } from "./days-from-date.ts";
import { gradeFromCells } from "./grade-from-cells.ts";
import { isWords } from "./is-words.ts";
import { labelsFromTexts } from "./labels-from-texts.ts";
import { quantityFromCells } from "./quantity-from-cells.ts";

type Parts = {
  readonly name: string;
  readonly header: string;
  readonly origin: ColumnOrigin;
  readonly warnings: number;
};
export type ColumnRead = { readonly column: Column; readonly otherDimension: number; readonly otherScale: number };

function textsOf(cells: Cells): (string | null)[] {
  const texts = new Array<string | null>(cells.length);
  for (let row = 0; row < cells.length; row++) {
    const value = valueAt(cells, row);
    texts[row] = value === null ? null : String(value);
  }
  return texts;
}

const YES = new Set(["yes", "true", "1"]);

function textColumn(parts: Parts, cells: Cells, kind: string | undefined): Column {
  const texts = textsOf(cells);
  if (kind === "words") return { ...parts, kind: "words", texts };
  const labels = labelsFromTexts(texts);
  if (kind !== "label" && kind !== "id" && isWords(parts.name, labels)) return { ...parts, kind: "words", texts };
  return { ...parts, kind: "label", ...labels };
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
  const texts = new Array<string | null>(cells.length).fill(null);
  const days = new Float64Array(cells.length).fill(Number.NaN);
  // Many records are of one day, and a day is worked out once.
  const known = new Map<string, number>();
  for (let row = 0; row < cells.length; row++) {
    const text = kindAt(cells, row) === "date" ? valueAt(cells, row) : null;
    if (typeof text !== "string") continue;
    const day = known.get(text) ?? daysFromDate(text);
    known.set(text, day);
    texts[row] = text;
    days[row] = day;
  }
  return { ...parts, kind: "date", days, texts };
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

// A column's readings into its packed cells: what is read once for many equal cells is written to each of their rows.
import { type Cells, cellKinds } from "./cells.ts";
import { LONE, NUMERAL } from "./readers/column-scan.ts";
import type { ColumnReading, ColumnSource } from "./readers/column-source.ts";

/** A list that keeps each value once; `first` is the value of place 0. */
function onceList<T>(first: T[]): { list: T[]; placeOf: (value: T) => number } {
  const list = [...first];
  const known = new Map(first.map((value, at) => [value, at] as const));
  return {
    list,
    placeOf: (value) => {
      const place = known.get(value) ?? list.push(value) - 1;
      known.set(value, place);
      return place;
    },
  };
}

const [QUANTITY, TEXT] = [cellKinds.indexOf("quantity"), cellKinds.indexOf("text")];

/** The cells of a column as it was read. */
export function packedCells(source: ColumnSource, read: ColumnReading): Cells {
  const { scan, cellAt } = source;
  const { length } = scan.places;
  const kinds = new Uint8Array(length);
  const numbers =
    scan.numbers ?? (read.cells.some(({ value }) => typeof value === "number") ? new Float64Array(length) : null);
  const uncertainties = read.cells.some(({ uncertainty }) => uncertainty !== undefined)
    ? new Float64Array(length).fill(Number.NaN)
    : null;
  const units = onceList<string | null>([null]);
  const codes = onceList<string | undefined>([undefined]);
  const texts = onceList<string | undefined>([undefined]);
  // What each cell comes to, as places in the lists.
  const kindOf = read.cells.map(({ kind }) => cellKinds.indexOf(kind));
  const unitOf = read.cells.map(({ unit }) => units.placeOf(unit));
  const codeOf = read.cells.map(({ code }) => codes.placeOf(code));
  const textOf = read.cells.map(({ value, raw }) =>
    texts.placeOf(typeof value === "string" && value !== raw.trim() ? value : undefined),
  );
  const numeralUnit = units.placeOf(read.numerals?.unit ?? null);
  const numeralCode = codes.placeOf(read.numerals?.code);
  for (const code of read.rowCodes?.values() ?? []) codes.placeOf(code);
  const unitPlaces = units.list.length > 1 ? new Uint16Array(length) : null;
  const codePlaces = codes.list.length > 1 ? new Uint8Array(length) : null;
  const textPlaces = texts.list.length > 1 ? new Uint32Array(length) : null;
  const firstLone = read.cells.length - scan.lone.length;

  for (let row = 0; row < length; row++) {
    const place = scan.places[row] ?? 0;
    if (place === NUMERAL) {
      kinds[row] = QUANTITY;
      if (unitPlaces !== null) unitPlaces[row] = numeralUnit;
      if (codePlaces !== null && numeralCode > 0) codePlaces[row] = numeralCode;
      continue;
    }
    const at = place <= LONE ? firstLone + LONE - place : (cellAt[place] ?? -1);
    if (numbers !== null) numbers[row] = Number.NaN;
    if (at < 0) {
      kinds[row] = TEXT;
      continue;
    }
    kinds[row] = kindOf[at] ?? 0;
    if (unitPlaces !== null) unitPlaces[row] = unitOf[at] ?? 0;
    if (codePlaces !== null) codePlaces[row] = codeOf[at] ?? 0;
    if (textPlaces !== null) textPlaces[row] = textOf[at] ?? 0;
    const { value, uncertainty } = read.cells[at] ?? {};
    if (numbers !== null && typeof value === "number") numbers[row] = value;
    if (uncertainties !== null && uncertainty !== undefined) uncertainties[row] = uncertainty;
  }
  if (codePlaces !== null)
    for (const [row, code] of read.rowCodes ?? []) if (codePlaces[row] === 0) codePlaces[row] = codes.placeOf(code);
  return {
    length,
    raw: scan.raw,
    kinds,
    numbers,
    uncertainties,
    unitPlaces,
    units: units.list,
    codePlaces,
    codes: codes.list.slice(1).map(String),
    textPlaces,
    texts: texts.list.slice(1).map(String),
  };
}

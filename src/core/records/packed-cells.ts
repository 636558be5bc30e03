// A column's readings into its packed cells: what is read once for many equal cells is written to each of their rows.
import { type Cells, cellKinds } from "./cells.ts";
import type { ColumnScan } from "./readers/column-scan.ts";
import type { ColumnReading, ColumnSource } from "./readers/column-source.ts";
import { LONE } from "./readers/numeral-counts.ts";

/** A list that keeps each value once, after a first one which is place 0. */
function onceList<T>(first: T): { list: T[]; placeOf: (value: T) => number } {
  const list = [first];
  const known = new Map([[first, 0]]);
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

/**
 * For each row the cell of its reading: two past it, since 0 is a plain numeral and 1 a plain word. The readings of the two stand before
 * those of the cells in every table below.
 */
function cellOfRows({ places, lone }: ColumnScan, cellAt: Int32Array, cells: number): Int32Array {
  const firstLone = cells - lone.length;
  const rows = new Int32Array(places.length);
  for (let row = 0; row < rows.length; row++) {
    const place = places[row] ?? 0;
    if (place >= 0) rows[row] = (cellAt[place] ?? 0) + 2;
    else if (place <= LONE) rows[row] = firstLone + LONE - place + 2;
  }
  return rows;
}

/** A value for each row: that of the row's cell. */
function spread<T extends Uint8Array | Uint16Array | Uint32Array>(rows: Int32Array, values: T, into: T): T {
  for (let row = 0; row < rows.length; row++) into[row] = values[rows[row] ?? 0] ?? 0;
  return into;
}

/** A number for each row that has none yet: that of the row's cell; plain numerals keep theirs. */
function spreadNumbers(rows: Int32Array, values: Float64Array, into: Float64Array): Float64Array {
  for (let row = 0; row < rows.length; row++) {
    const at = rows[row] ?? 0;
    if (at > 0) into[row] = values[at] ?? Number.NaN;
  }
  return into;
}

const NO_NUMERALS = { unit: null, code: undefined };

/** The cells of a column as it was read. */
export function packedCells({ scan, cellAt }: ColumnSource, read: ColumnReading): Cells {
  const { length } = scan.places;
  const { unit, code } = read.numerals ?? NO_NUMERALS;
  const units = onceList<string | null>(null);
  const codes = onceList<string | undefined>(undefined);
  const texts = onceList<string | undefined>(undefined);
  // What the plain numerals, the plain words and each cell come to; the words' share of every table but the first is nothing.
  const size = read.cells.length + 2;
  const [kindOf, codeOf] = [new Uint8Array(size), new Uint8Array(size)];
  const [unitOf, textOf] = [new Uint16Array(size), new Uint32Array(size)];
  const [numberOf, uncertaintyOf] = [new Float64Array(size).fill(Number.NaN), new Float64Array(size).fill(Number.NaN)];
  kindOf[0] = QUANTITY;
  kindOf[1] = TEXT;
  unitOf[0] = units.placeOf(unit);
  codeOf[0] = codes.placeOf(code);
  for (const [at, cell] of read.cells.entries()) {
    const { value, raw } = cell;
    kindOf[at + 2] = cellKinds.indexOf(cell.kind);
    unitOf[at + 2] = units.placeOf(cell.unit);
    codeOf[at + 2] = codes.placeOf(cell.code);
    if (typeof value === "number") numberOf[at + 2] = value;
    if (typeof value === "string" && value !== raw.trim()) textOf[at + 2] = texts.placeOf(value);
    if (cell.uncertainty !== undefined) uncertaintyOf[at + 2] = cell.uncertainty;
  }
  for (const own of read.rowCodes?.values() ?? []) codes.placeOf(own);

  const rows = cellOfRows(scan, cellAt, read.cells.length);
  const some = (values: Float64Array) => !values.every(Number.isNaN);
  const numbers = scan.numbers ?? (some(numberOf) ? new Float64Array(length) : null);
  const codePlaces = codes.list.length > 1 ? spread(rows, codeOf, new Uint8Array(length)) : null;
  if (codePlaces !== null)
    for (const [row, own] of read.rowCodes ?? []) if (codePlaces[row] === 0) codePlaces[row] = codes.placeOf(own);
  return {
    length,
    raw: scan.raw,
    kinds: spread(rows, kindOf, new Uint8Array(length)),
    numbers: numbers === null ? null : spreadNumbers(rows, numberOf, numbers),
    uncertainties: some(uncertaintyOf)
      ? spreadNumbers(rows, uncertaintyOf, new Float64Array(length).fill(Number.NaN))
      : null,
    unitPlaces: units.list.length > 1 ? spread(rows, unitOf, new Uint16Array(length)) : null,
    units: units.list,
    codePlaces,
    codes: codes.list.slice(1).map(String),
    textPlaces: texts.list.length > 1 ? spread(rows, textOf, new Uint32Array(length)) : null,
    texts: texts.list.slice(1).map(String),
  };
}

// The cells of one column, packed: what a cell costs is a few bytes, and what no cell has takes none.
//
//   row             0         1          2           3
//   raw             "2.31"    ""         "2,4 cm"    "3/64"
//   kinds         [ quantity, blank,     quantity,   unreadable ]   places in cellKinds
//   numbers       [ 2.31,     NaN,       2.4,        NaN ]          null where no cell has a number
//   uncertainties   null                                            NaN where a cell has none
//   unitPlaces    [ 1,        0,         2,          0 ]            into units: [ null, "mm", "cm" ]; null: 0 throughout
//   codePlaces    [ 0,        0,         1,          2 ]            into codes: [ "unit-differs", "fraction-without-inch" ], from 1; null: no codes
//   textPlaces      null                                            into texts, from 1; 0: the trimmed raw text is the value
import type { CellKind, Reading } from "./reading.ts";

export const cellKinds = [
  "blank",
  "quantity",
  "text",
  "date",
  "pitch",
  "grade",
  "unreadable",
] as const satisfies CellKind[];

/** Raw texts as stretches of one text. `apart`: those that do not stand in it as they are (doubled quotes), by row. */
export type RawCells = {
  readonly text: string;
  readonly starts: Int32Array;
  readonly ends: Int32Array;
  readonly apart: ReadonlyMap<number, string>;
};
export type Cells = {
  readonly length: number;
  readonly raw: RawCells;
  readonly kinds: Uint8Array;
  readonly numbers: Float64Array | null;
  readonly uncertainties: Float64Array | null;
  readonly unitPlaces: Uint16Array | null;
  readonly units: readonly (string | null)[];
  readonly codePlaces: Uint8Array | null;
  readonly codes: readonly string[];
  readonly textPlaces: Uint32Array | null;
  readonly texts: readonly string[];
};

/** The raw text of a row, from 0. */
export function rawAt({ raw }: Cells, row: number): string {
  return raw.apart.get(row) ?? raw.text.slice(raw.starts[row], raw.ends[row]);
}

/** The code of a row, undefined where it is certain. */
export function codeAt({ codePlaces, codes }: Cells, row: number): string | undefined {
  return codePlaces === null ? undefined : codes[(codePlaces[row] ?? 0) - 1];
}

/** The unit of a row, null where none was said. */
export function unitAt({ unitPlaces, units }: Cells, row: number): string | null {
  return units[unitPlaces?.[row] ?? 0] ?? null;
}

export const kindAt = ({ kinds }: Cells, row: number): CellKind => cellKinds[kinds[row] ?? 0] ?? "blank";

/** The value of a row: null where it is blank or unreadable. */
export function valueAt(cells: Cells, row: number): number | string | null {
  const kind = kindAt(cells, row);
  if (kind === "blank" || kind === "unreadable") return null;
  const number = cells.numbers?.[row] ?? Number.NaN;
  if (!Number.isNaN(number)) return number;
  const place = cells.textPlaces?.[row] ?? 0;
  return place > 0 ? (cells.texts[place - 1] ?? null) : rawAt(cells, row).trim();
}

/** One cell whole. */
export function readingAt(cells: Cells, row: number): Reading {
  const uncertainty = cells.uncertainties?.[row] ?? Number.NaN;
  const code = codeAt(cells, row);
  return {
    raw: rawAt(cells, row),
    kind: kindAt(cells, row),
    value: valueAt(cells, row),
    unit: unitAt(cells, row),
    ...(Number.isNaN(uncertainty) ? {} : { uncertainty }),
    ...(code === undefined ? {} : { code }),
  };
}

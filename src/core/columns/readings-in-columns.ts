import type { RecordColumn, RecordTable, RepeatedReadings } from "../records/index.ts";
import type { PlaceInName } from "./place-in-name.ts";
import { placeInName } from "./place-in-name.ts";
import { quantityFromCells, unitOfCode } from "./quantity-from-cells.ts";

/** Readings of one thing lie together: their columns' medians within this share of the largest. Two of them need to lie closer than many. */
const NEAR = { two: 0.15, many: 0.3 };

function medianOf(column: RecordColumn): number {
  const { values } = quantityFromCells(column.cells, column.unit, {});
  const given = values.filter((value) => !Number.isNaN(value)).sort();
  return given[Math.floor(given.length / 2)] ?? Number.NaN;
}

function lieTogether(columns: readonly RecordColumn[]): boolean {
  const medians = columns.map(medianOf);
  const largest = Math.max(...medians.map(Math.abs));
  const range = Math.max(...medians) - Math.min(...medians);
  return range <= (columns.length === 2 ? NEAR.two : NEAR.many) * largest;
}

/** What columns must share to be readings of one thing: the stem, how the place is said, and the dimension. */
function keyOf({ stem, numbered }: PlaceInName, column: RecordColumn): string {
  const dimension = column.unit === null ? null : (unitOfCode(column.unit)?.dimension ?? null);
  return JSON.stringify([stem, numbered, dimension]);
}

/** Sets of quantity columns whose headers differ in a trailing number (three or more of them) or a word for a place (two or more). */
export function readingsInColumns(table: RecordTable): readonly RepeatedReadings[] {
  const sets = new Map<
    string,
    { readonly name: string; readonly numbered: boolean; readonly columns: RecordColumn[] }
  >();
  for (const column of table.columns) {
    const place = column.kind === "quantity" ? placeInName(column.name) : null;
    if (!place) continue;
    const key = keyOf(place, column);
    const set = sets.get(key) ?? { name: place.stem, numbered: place.numbered, columns: [] };
    set.columns.push(column);
    sets.set(key, set);
  }
  return [...sets.values()]
    .filter(({ numbered, columns }) => columns.length >= (numbered ? 3 : 2) && lieTogether(columns))
    .map(({ name, columns }) => ({ name, columns: columns.map((column) => column.name) }));
}

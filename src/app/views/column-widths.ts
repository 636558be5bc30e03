import type { RecordsCell, RecordsPage, RecordsRow } from "../../core/records/index.ts";
import { isInReading } from "./is-in-reading.ts";

/** Characters; a mark is a word in its frame. */
const [LEAST, MOST, ROW_HEAD, ROOM, MARK] = [9, 30, 12, 3, 6] as const;
const SAMPLE = 60;

function charactersOf(cell: RecordsCell, unit: string | null): number {
  const marks = (cell.warning === undefined ? 0 : MARK) + (cell.before === undefined ? 0 : MARK);
  return Math.max(cell.raw === "" ? 0 : cell.reading.length, marks + (isInReading(cell, unit) ? 0 : cell.raw.length));
}

/** Width of the row's head and of each column in characters, by rows from `first` on, and no narrower than `before`: columns stay while rows come and go. */
export function columnWidths(
  head: RecordsPage,
  rowAt: (position: number) => RecordsRow | undefined,
  first: number,
  before: readonly number[],
): readonly number[] {
  const rows = Array.from({ length: SAMPLE }, (_, at) => rowAt(first + at));
  const widths = head.columns.map(({ kind, name, unit }, place) => {
    const found = rows.flatMap((row) => {
      const cell = row?.cells[place];
      return cell === undefined ? [] : [charactersOf(cell, unit)];
    });
    const longest = Math.max(LEAST, kind.length, Math.min(name.length, 2 * LEAST), ...found);
    return Math.max(Math.min(MOST, longest) + ROOM, before[place + 1] ?? 0);
  });
  return [ROW_HEAD, ...widths];
}

import type { RecordsPage, RecordsRow } from "../../core/records/index.ts";

const [LEAST, MOST, ROW_HEAD, ROOM] = [9, 30, 15, 4];
const SAMPLE = 60;

/** Width of the row's head and of each column in characters, by the first rows: it stays while rows come and go. */
export function columnWidths(
  head: RecordsPage,
  rowAt: (position: number) => RecordsRow | undefined,
): readonly number[] {
  const rows = Array.from({ length: Math.min(SAMPLE, head.matching) }, (_, position) => rowAt(position));
  const widths = head.columns.map((column, place) => {
    const texts = rows.flatMap((row) => {
      const cell = row?.cells[place];
      return cell === undefined ? [] : [cell.raw === "" ? "" : cell.reading, cell.raw];
    });
    const longest = [column.kind, column.name.slice(0, 2 * LEAST), ...texts].reduce(
      (most, text) => Math.max(most, text.length),
      LEAST,
    );
    return Math.min(MOST, longest) + ROOM;
  });
  return [ROW_HEAD, ...widths];
}

import type { Cells, RecordColumn, RecordTable } from "../records/index.ts";
import { valueAt } from "../records/index.ts";

/** Words of a header that say that the column names pieces. A lot or a batch has several pieces, so its repeats mean nothing. */
const PIECE_WORDS = new Set(
  "id ids piece board plate top back guitar instrument serial code ref sku stück pieza pièce tabla brett".split(" "),
);

const namesPieces = ({ name, kind }: RecordColumn): boolean =>
  kind === "text" &&
  name
    .normalize("NFC")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]/u)
    .some((word) => PIECE_WORDS.has(word));

function rowsByValue(cells: Cells): ReadonlyMap<string, readonly number[]> {
  const rows = new Map<string, number[]>();
  for (let row = 0; row < cells.length; row++) {
    const value = valueAt(cells, row);
    if (value === null) continue;
    const own = rows.get(String(value));
    if (own) own.push(row);
    else rows.set(String(value), [row]);
  }
  return rows;
}

/** Whether most pieces of several rows have different entries of a column on them. */
function varies({ cells }: RecordColumn, pieces: readonly (readonly number[])[]): boolean {
  const varying = pieces.filter((rows) => {
    const given = new Set(rows.map((row) => valueAt(cells, row)).filter((value) => value !== null));
    return given.size > 1;
  });
  return varying.length * 2 > pieces.length;
}

/**
 * The column that names pieces of which most stand on several rows, with quantities that differ between those rows. None where another such column
 * has no repeats (it names the records), or where dates differ too: that is a history of the piece, not one thing read again.
 */
export function readingsInRows(
  table: RecordTable,
): { readonly column: string; readonly repeated: number; readonly pieces: number } | null {
  for (const column of table.columns.filter(namesPieces)) {
    const pieces = [...rowsByValue(column.cells).values()];
    const several = pieces.filter((rows) => rows.length > 1);
    if (several.length === 0 && pieces.length > 0) return null;
    if (several.length < 2 || several.length * 2 <= pieces.length) continue;
    const changes = (kind: RecordColumn["kind"]): boolean =>
      table.columns.some((each) => each.kind === kind && varies(each, several));
    if (changes("quantity") && !changes("date"))
      return { column: column.name, repeated: several.length, pieces: pieces.length };
  }
  return null;
}

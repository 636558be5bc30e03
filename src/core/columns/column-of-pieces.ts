// One column of readings becomes a column of pieces.
import type { Column, QuantityColumn, WordsColumn } from "./column.ts";
import { columnOfRows } from "./column-of-rows.ts";
import { meanOfReadings } from "./mean-of-readings.ts";
import type { PieceMembers } from "./piece-members.ts";

type Members = PieceMembers["members"];
type Single = Exclude<Column, QuantityColumn | WordsColumn>;

/** `rows`: the row whose entry stands for each piece, -1 for none, null where all its rows count; `disagree`: pieces whose rows differ. */
export type ColumnOfPieces = {
  readonly column: Column;
  readonly rows: Int32Array | null;
  readonly disagree: readonly number[];
};

/** Means with the standard error of the spread and each reading's own uncertainty over their number, in squares. */
function means(column: QuantityColumn, members: Members): QuantityColumn {
  const values = new Float64Array(members.length);
  const uncertainty = new Float64Array(members.length);
  for (const [piece, rows] of members.entries()) {
    const { count, mean, standardError } = meanOfReadings(rows.map((row) => column.values[row] ?? Number.NaN));
    values[piece] = mean;
    const own = rows.reduce((sum, row) => {
      const part = column.uncertainty?.[row] ?? Number.NaN;
      return Number.isNaN(part) ? sum : sum + (part / count) ** 2;
    }, 0);
    uncertainty[piece] = count === 0 ? Number.NaN : Math.sqrt(standardError ** 2 + own);
  }
  return { ...column, values, uncertainty: uncertainty.some((each) => each > 0) ? uncertainty : null };
}

/** What the maker noted of a piece on its several rows, one after the other. */
const notesTogether = (column: WordsColumn, members: Members): WordsColumn => ({
  ...column,
  texts: members.map((rows) => [...new Set(rows.flatMap((row) => column.texts[row] ?? []))].join("; ") || null),
});

/** What stands at a row; null where nothing does. */
function standing(column: Single, row: number): string | number | null {
  if (column.kind === "yes-no") return column.values[row] === -1 ? null : (column.values[row] ?? null);
  if (column.kind === "label" || column.kind === "grade")
    return column.codes[row] === -1 ? null : (column.codes[row] ?? null);
  return column.texts[row] ?? null;
}

/** The entry on which all rows of a piece agree; none where they do not. */
function agreed(column: Single, members: Members): ColumnOfPieces {
  const disagree: number[] = [];
  const rows = Int32Array.from(members, (own, piece) => {
    const given = own.filter((row) => standing(column, row) !== null);
    const [first = -1] = given;
    if (given.every((row) => standing(column, row) === standing(column, first))) return first;
    disagree.push(piece);
    return -1;
  });
  return { column: columnOfRows(column, rows), rows, disagree };
}

/** Quantities as means, notes together, of any other kind the entry on which a piece's rows agree. */
export function columnOfPieces(column: Column, members: Members): ColumnOfPieces {
  if (column.kind === "quantity") return { column: means(column, members), rows: null, disagree: [] };
  if (column.kind === "words") return { column: notesTogether(column, members), rows: null, disagree: [] };
  return agreed(column, members);
}

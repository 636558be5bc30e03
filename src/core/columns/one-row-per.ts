// Several rows of readings of one piece become one row. The piece is the evidence, not the reading.
import type { RowRef, TraceCell } from "../base/index.ts";
import { cellsBehind } from "./cells-behind.ts";
import type { Column, QuantityColumn, WordsColumn } from "./column.ts";
import { columnNotes, someNames } from "./column-notes.ts";
import { columnOfRows } from "./column-of-rows.ts";
import type { ColumnTable } from "./column-table.ts";
import { meanOfReadings } from "./mean-of-readings.ts";
import { textsOfColumn } from "./piece-names.ts";

/** Rows of each piece, in the order in which pieces first appear. */
type Members = readonly (readonly number[])[];

/** Rows by the text that names their piece; a row without one stays alone. */
function membersOf(texts: readonly (string | null)[]): Members {
  const members: number[][] = [];
  const places = new Map<string, number[]>();
  for (const [row, text] of texts.entries()) {
    const known = text === null ? undefined : places.get(text);
    if (known) known.push(row);
    else {
      const own = [row];
      members.push(own);
      if (text !== null) places.set(text, own);
    }
  }
  return members;
}

/** Rows set aside are no readings of their piece; a piece without any other keeps them, and is set aside itself. */
function withoutAside(members: Members, setAside: ReadonlyMap<number, string>) {
  const leftOut = new Map<number, string>();
  const kept = members.map((rows, piece) => {
    const own = rows.filter((row) => !setAside.has(row));
    if (own.length > 0) return own;
    leftOut.set(piece, setAside.get(rows[0] ?? -1) ?? "");
    return rows;
  });
  return { kept, leftOut };
}

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

/** What stands at a row of a column that is no quantity; null where nothing does. */
function standing(column: Exclude<Column, QuantityColumn>, row: number): string | number | null {
  if (column.kind === "yes-no") return column.values[row] === -1 ? null : (column.values[row] ?? null);
  if (column.kind === "label" || column.kind === "grade")
    return column.codes[row] === -1 ? null : (column.codes[row] ?? null);
  return column.texts[row] ?? null;
}

/** What the maker noted of a piece on its several rows, one after the other. */
const notesTogether = (column: WordsColumn, members: Members): WordsColumn => ({
  ...column,
  texts: members.map((rows) => [...new Set(rows.flatMap((row) => column.texts[row] ?? []))].join("; ") || null),
});

/** For each piece the row whose entry stands for all, -1 where they have none or disagree; and the pieces that disagree. */
function agreed(column: Exclude<Column, QuantityColumn>, members: Members) {
  const disagree: number[] = [];
  const rows = Int32Array.from(members, (own, piece) => {
    const given = own.filter((row) => standing(column, row) !== null);
    const [first = -1] = given;
    if (given.every((row) => standing(column, row) === standing(column, first))) return first;
    disagree.push(piece);
    return -1;
  });
  return { rows, disagree };
}

/**
 * The table with one row for each piece: quantities are means, notes stand together, other entries stay where all rows of the piece agree and are
 * missing where they do not, with a note that names the piece. by: the column that names the piece. Rows that equal an earlier one count: two
 * readings may well be alike. setAside: rows that the maker set aside, and why; they do not count.
 */
export function oneRowPer(
  table: ColumnTable,
  by: string,
  setAside: ReadonlyMap<number, string> = new Map(),
): ColumnTable {
  const naming = table.columns.get(by);
  if (!naming) return { ...table, notes: [...table.notes, columnNotes["piece-unknown"]({ column: by })] };
  const texts = textsOfColumn(naming, table.rowCount, (row) => table.cellAt(by, row)?.raw ?? "");
  const { kept: members, leftOut } = withoutAside(membersOf(texts), setAside);
  const rows = members.map(([first = 0]): RowRef => {
    const ref = table.rows[first] as RowRef;
    return { ...ref, piece: texts[first] ?? `row ${ref.row}` };
  });
  const notes = [
    ...table.notes,
    columnNotes["one-row-per"]({ readings: table.rowCount, pieces: members.length, file: table.name }),
  ];
  const equal = table.leftOut.size - setAside.size;
  if (equal > 0) notes.push(columnNotes["equal-readings"]({ count: equal }));
  if (setAside.size > 0) notes.push(columnNotes["readings-set-aside"]({ count: setAside.size }));
  const columns = new Map<string, Column>();
  const single = new Map<string, Int32Array>();
  for (const [name, column] of table.columns) {
    if (column.kind === "quantity") columns.set(name, means(column, members));
    else if (column.kind === "words") columns.set(name, notesTogether(column, members));
    else {
      const found = agreed(column, members);
      single.set(name, found.rows);
      columns.set(name, columnOfRows(column, found.rows));
      const pieces = someNames(found.disagree.map((piece) => rows[piece]?.piece ?? ""));
      if (found.disagree.length > 0)
        notes.push(columnNotes["readings-disagree"]({ column: name, count: found.disagree.length, pieces }));
    }
  }
  const cellsAt = (column: string, row: number): readonly TraceCell[] =>
    (members[row] ?? []).flatMap((own) => cellsBehind(table, column, own));
  const cellAt = (column: string, row: number): TraceCell | null => {
    const own = members[row] ?? [];
    const at = own.length === 1 ? own[0] : single.get(column)?.[row];
    return at === undefined ? null : table.cellAt(column, at);
  };
  return { ...table, rowCount: members.length, columns, rows, leftOut, cellAt, cellsAt, notes };
}

// Two record tables side by side, matched by a column they share. Which rows those were is never forgotten.
import type { RowRef, TraceCell } from "../base/index.ts";
import { cellsBehind } from "./cells-behind.ts";
import type { Column } from "./column.ts";
import { freeName } from "./column-name.ts";
import { columnOfRows } from "./column-of-rows.ts";
import type { ColumnTable } from "./column-table.ts";
import { joinKeys, keyCounts } from "./join-keys.ts";
import { joinNotes } from "./join-notes.ts";
import { matchedRows } from "./matched-rows.ts";
import { renamedColumn } from "./renamed-column.ts";

/** The joined table and the remarks that joining added to it. */
export type Joined = { readonly table: ColumnTable; readonly notes: readonly string[] };

/** Names of the right table's columns in the joined one: their own, or with `_2` where the left has it. */
function namesOfRight(left: ColumnTable, right: ColumnTable, on: string): ReadonlyMap<string, string> {
  const taken = new Set(left.columns.keys());
  const names = new Map<string, string>();
  for (const name of right.columns.keys()) {
    if (name === on) continue;
    const own = freeName(name, taken);
    taken.add(own);
    names.set(name, own);
  }
  return names;
}

/**
 * The left table with the columns of the right one, matched where `on` has the same text (NFC, outer space trimmed, case as it is). Every row of
 * the left table stays: once for each match, and with missing values where nothing matches. Records without a match on either side, with several,
 * and ids that only look alike are in `notes`. A column name that both have gets `_2`. A record that stands on several rows is no separate evidence on
 * each: where nothing else is said, its rows share the key. on: a column that both tables have.
 */
export function joinTables(left: ColumnTable, right: ColumnTable, on: string): Joined {
  const keys = joinKeys(left, right, on);
  const { lefts, rights } = matchedRows(keys);
  const counts = [
    keyCounts(keys.left, keys.texts.length, left.leftOut),
    keyCounts(keys.right, keys.texts.length, right.leftOut),
  ] as const;
  const doubles = counts[1].some((count, place) => count > 1 && (counts[0][place] ?? 0) > 0);
  const shares = doubles && left.shared === undefined;
  const names = namesOfRight(left, right, on);
  const rightNames = new Map([...names].map(([name, own]) => [own, name]));
  const columns = new Map<string, Column>();
  for (const [name, column] of left.columns) columns.set(name, columnOfRows(column, lefts));
  for (const [name, own] of names)
    columns.set(own, renamedColumn(columnOfRows(right.columns.get(name) as Column, rights), names));
  const leftOut = new Map<number, string>();
  if (left.leftOut.size + right.leftOut.size > 0)
    for (const [index, row] of lefts.entries()) {
      const why = left.leftOut.get(row) ?? right.leftOut.get(rights[index] ?? -1);
      if (why !== undefined) leftOut.set(index, why);
    }
  const cellsAt = (column: string, row: number): readonly TraceCell[] => {
    const own = rightNames.get(column);
    if (own === undefined) return cellsBehind(left, column, lefts[row] ?? -1);
    return cellsBehind(right, own, rights[row] ?? -1).map((cell) => ({ ...cell, column }));
  };
  const cellAt = (column: string, row: number): TraceCell | null => {
    const own = rightNames.get(column);
    if (own === undefined) return left.cellAt(column, lefts[row] ?? -1);
    const cell = right.cellAt(own, rights[row] ?? -1);
    return cell && { ...cell, column };
  };
  const rows = Array.from(lefts, (row) => left.rows[row] as RowRef);
  const notes = joinNotes([left, right], on, keys, counts, shares);
  return {
    table: {
      ...left,
      ...(shares ? { shared: on } : {}),
      rowCount: lefts.length,
      columns,
      rows,
      leftOut,
      cellAt,
      cellsAt,
      notes: [...left.notes, ...right.notes, ...notes],
    },
    notes,
  };
}

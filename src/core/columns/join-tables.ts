// Two record tables side by side, matched by a column they share. Matching is arquero's; which rows those were is never forgotten.
import { table as arqueroTable } from "arquero";
import type { TraceCell } from "../base/index.ts";
import type { Column } from "./column.ts";
import { freeName } from "./column-name.ts";
import { columnNotes, someNames } from "./column-notes.ts";
import { columnOfRows } from "./column-of-rows.ts";
import type { ColumnTable } from "./column-table.ts";
import { lookAlikeKey } from "./look-alike-key.ts";
import { textsOfColumn } from "./piece-names.ts";

/** The joined table and the remarks that joining added to it. */
export type Joined = { readonly table: ColumnTable; readonly notes: readonly string[] };
type Keys = readonly (string | null)[];

function keysOf(table: ColumnTable, on: string): Keys {
  const column = table.columns.get(on);
  const texts = column ? textsOfColumn(column, table.rowCount, (row) => table.cellAt(on, row)?.raw ?? "") : [];
  return texts.map((text) => text?.trim().normalize("NFC") || null);
}

/** Row numbers of the pairs, in the left table's order, then the right's; right is -1 where nothing matches. A row without a key matches nothing. */
function matchedRows(left: Keys, right: Keys): { readonly lefts: Int32Array; readonly rights: Int32Array } {
  const rightRows = right.flatMap((key, row) => (key === null ? [] : [row]));
  const leftTable = arqueroTable({
    key: left.map((key, row) => (key === null ? `\u0000${row}` : `=${key}`)),
    left: left.map((_, row) => row),
  });
  const rightTable = arqueroTable({ key: rightRows.map((row) => `=${right[row]}`), right: rightRows });
  const pairs = leftTable.join_left(rightTable, "key") as unknown as {
    array: (name: string) => ArrayLike<number | undefined>;
  };
  const [lefts, rights] = [Array.from(pairs.array("left")), Array.from(pairs.array("right"))];
  const order = lefts
    .map((_, index) => index)
    .sort((a, b) => (lefts[a] ?? 0) - (lefts[b] ?? 0) || (rights[a] ?? -1) - (rights[b] ?? -1));
  return {
    lefts: Int32Array.from(order, (index) => lefts[index] ?? -1),
    rights: Int32Array.from(order, (index) => rights[index] ?? -1),
  };
}

/** The file that a table's first column comes from, which tells two tables of one notebook entry apart; else its name. */
function fileOf(table: ColumnTable): string {
  for (const { origin } of table.columns.values()) if (origin.from === "file") return origin.file;
  return table.name;
}

function joinNotes(left: ColumnTable, right: ColumnTable, leftKeys: Keys, rightKeys: Keys): readonly string[] {
  const notes: string[] = [];
  const names = { left: fileOf(left), right: fileOf(right) };
  const rightCounts = new Map<string, number>();
  for (const key of rightKeys) if (key !== null) rightCounts.set(key, (rightCounts.get(key) ?? 0) + 1);
  const leftSet = new Set(leftKeys);
  const several = leftKeys.filter((key) => key !== null && (rightCounts.get(key) ?? 0) > 1) as string[];
  const alone = leftKeys.flatMap((key, row) =>
    key === null || !rightCounts.has(key) ? [key ?? `row ${row + 1}`] : [],
  );
  const unused = rightKeys.flatMap((key, row) => (key === null || !leftSet.has(key) ? [key ?? `row ${row + 1}`] : []));
  if (several.length > 0)
    notes.push(columnNotes["matched-several"]({ ...names, count: several.length, keys: someNames(several) }));
  if (alone.length > 0)
    notes.push(columnNotes["unmatched-left"]({ ...names, count: alone.length, keys: someNames(alone) }));
  if (unused.length > 0)
    notes.push(columnNotes["unmatched-right"]({ ...names, count: unused.length, keys: someNames(unused) }));
  const twins = new Map(unused.map((key) => [lookAlikeKey(key), key]));
  for (const key of new Set(alone)) {
    const twin = twins.get(lookAlikeKey(key));
    if (twin !== undefined && twin !== key) notes.push(columnNotes["look-alike"]({ left: key, right: twin }));
  }
  return notes;
}

/**
 * The left table with the columns of the right one, matched where `on` has the same text (NFC, outer space trimmed, case as it is). Every row of
 * the left table stays: once for each match, and with missing values where nothing matches. Records without a match on either side, with several,
 * and ids that only look alike are in `notes`. A column name that both have gets `_2`. on: a column that both tables have.
 */
export function joinTables(left: ColumnTable, right: ColumnTable, on: string): Joined {
  const [leftKeys, rightKeys] = [keysOf(left, on), keysOf(right, on)];
  const { lefts, rights } = matchedRows(leftKeys, rightKeys);
  const columns = new Map<string, Column>();
  for (const [name, column] of left.columns) columns.set(name, columnOfRows(column, lefts));
  const rightNames = new Map<string, string>();
  for (const [name, column] of right.columns) {
    if (name === on) continue;
    const own = freeName(name, columns);
    rightNames.set(own, name);
    columns.set(own, { ...columnOfRows(column, rights), name: own });
  }
  const leftOut = new Map<number, string>();
  for (const [index, row] of lefts.entries()) {
    const why = left.leftOut.get(row) ?? right.leftOut.get(rights[index] ?? -1);
    if (why !== undefined) leftOut.set(index, why);
  }
  const cellAt = (column: string, row: number): TraceCell | null => {
    const own = rightNames.get(column);
    if (own === undefined) return left.cellAt(column, lefts[row] ?? -1);
    const cell = right.cellAt(own, rights[row] ?? -1);
    return cell && { ...cell, column };
  };
  const rows = Array.from(lefts, (row, index) => ({
    table: left.name,
    row: row + 1,
    piece: left.rows[row]?.piece ?? `row ${index + 1}`,
  }));
  const notes = joinNotes(left, right, leftKeys, rightKeys);
  return {
    table: {
      ...left,
      rowCount: lefts.length,
      columns,
      rows,
      leftOut,
      cellAt,
      notes: [...left.notes, ...right.notes, ...notes],
    },
    notes,
  };
}

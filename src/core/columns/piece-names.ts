// What findings call a record.
import type { Column } from "./column.ts";

type Named = {
  readonly columns: ReadonlyMap<string, Column>;
  readonly rowCount: number;
  readonly rawAt: (column: string, row: number) => string;
};

/** The text of a column at each row, null where it is missing. */
export function textsOfColumn(
  column: Column,
  rowCount: number,
  rawAt: (row: number) => string,
): readonly (string | null)[] {
  const rows = Array.from({ length: rowCount }, (_, row) => row);
  if (column.kind === "label") return rows.map((row) => column.names[column.codes[row] ?? -1] ?? null);
  if (column.kind === "grade") return rows.map((row) => column.levels[column.codes[row] ?? -1] ?? null);
  if (column.kind === "words" || column.kind === "date" || column.kind === "pitch") return column.texts;
  return rows.map((row) => rawAt(row).trim() || null);
}

const hasNoRepeats = (texts: readonly (string | null)[]): boolean =>
  texts.every((text) => text !== null) && new Set(texts).size === texts.length;

/** The first label column without repeats or gaps, else the first such column of any kind but words; null if there is none. */
export function firstNamingColumn({ columns, rowCount, rawAt }: Named): string | null {
  if (rowCount === 0) return null;
  for (const labelsOnly of [true, false])
    for (const column of columns.values())
      if (
        (column.kind === "label") === labelsOnly &&
        column.kind !== "words" &&
        column.origin.from === "file" &&
        hasNoRepeats(textsOfColumn(column, rowCount, (row) => rawAt(column.name, row)))
      )
        return column.name;
  return null;
}

/** What each record is called: the text of the naming column, else "row 7". */
export function pieceNames(named: Named, naming: string | null): readonly string[] {
  const column = naming === null ? undefined : named.columns.get(naming);
  const texts = column ? textsOfColumn(column, named.rowCount, (row) => named.rawAt(column.name, row)) : [];
  return Array.from({ length: named.rowCount }, (_, row) => texts[row] ?? `row ${row + 1}`);
}

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
  if (column.kind === "label") return namesOfCodes(column.codes, column.names);
  if (column.kind === "grade") return namesOfCodes(column.codes, column.levels);
  if (column.kind === "words" || column.kind === "date" || column.kind === "pitch") return column.texts;
  return Array.from({ length: rowCount }, (_, row) => rawAt(row).trim() || null);
}

function namesOfCodes(codes: Int32Array, names: readonly string[]): readonly (string | null)[] {
  const texts = new Array<string | null>(codes.length);
  for (let row = 0; row < codes.length; row++) texts[row] = names[codes[row] as number] ?? null;
  return texts;
}

function hasNoRepeats(column: Column, rowCount: number, rawAt: (row: number) => string): boolean {
  // Of labels only those are names that occur: as many names as rows is each once, and none missing.
  if (column.kind === "label") return column.names.length === rowCount && !column.codes.includes(-1);
  const texts = textsOfColumn(column, rowCount, rawAt);
  return texts.every((text) => text !== null) && new Set(texts).size === texts.length;
}

/** The first label column without repeats or gaps, else the first such column of any kind but words; null if there is none. */
export function firstNamingColumn({ columns, rowCount, rawAt }: Named): string | null {
  if (rowCount === 0) return null;
  for (const labelsOnly of [true, false])
    for (const column of columns.values())
      if (
        (column.kind === "label") === labelsOnly &&
        column.kind !== "words" &&
        column.origin.from === "file" &&
        hasNoRepeats(column, rowCount, (row) => rawAt(column.name, row))
      )
        return column.name;
  return null;
}

/** What each record is called: the text of the naming column, else "row 7". */
export function pieceNames(named: Named, naming: string | null): readonly string[] {
  const column = naming === null ? undefined : named.columns.get(naming);
  const texts = column ? textsOfColumn(column, named.rowCount, (row) => named.rawAt(column.name, row)) : [];
  const names = new Array<string>(named.rowCount);
  for (let row = 0; row < named.rowCount; row++) names[row] = texts[row] ?? `row ${row + 1}`;
  return names;
}

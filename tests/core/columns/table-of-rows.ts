// Tables as they come out of reading, written short.
import { cellsFromReadings, type Reading, type RecordTable } from "../../../src/core/records/index.ts";

type Written =
  | number
  | string
  | null
  | {
      readonly value: number | string | null;
      readonly unit?: string | null;
      readonly uncertainty?: number;
      readonly code?: string;
      readonly kind?: Reading["kind"];
    };

/** Rows equal to an earlier one. */
function repeated(rows: readonly (readonly Written[])[]): number[] {
  const texts = rows.map((row) => JSON.stringify(row));
  return texts.flatMap((text, row) => (texts.indexOf(text) < row ? [row] : []));
}

/** heads: "mass [g] quantity"; rows: numbers are quantities in the head's unit, texts are texts, null is blank. */
export function tableOfRows(
  name: string,
  heads: readonly (readonly [name: string, unit: string | null, kind: RecordTable["columns"][number]["kind"]])[],
  rows: readonly (readonly Written[])[],
): RecordTable {
  const cellOf = (
    written: Written,
    [, unit, kind]: readonly [string, string | null, RecordTable["columns"][number]["kind"]],
  ): Reading => {
    if (written === null) return { raw: "", kind: "blank", value: null, unit: null };
    const own = typeof written === "object" ? written : { value: written };
    const sort =
      own.kind ??
      (typeof own.value === "number"
        ? kind === "grade"
          ? "grade"
          : "quantity"
        : kind === "quantity" || kind === "yes-no"
          ? "text"
          : kind);
    return {
      raw: String(own.value),
      kind: sort,
      value: own.value,
      unit: own.unit === undefined ? (sort === "quantity" || sort === "grade" ? unit : null) : own.unit,
      ...(own.uncertainty === undefined ? {} : { uncertainty: own.uncertainty }),
      ...(own.code === undefined ? {} : { code: own.code }),
    };
  };
  return {
    name,
    columns: heads.map((head, place) => ({
      name: head[0],
      unit: head[2] === "grade" ? null : head[1],
      kind: head[2],
      place,
      cells: cellsFromReadings(rows.map((row) => cellOf(row[place] ?? null, head))),
    })),
    rowCount: rows.length,
    records: Int32Array.from(rows, (_, row) => row + 2),
    repeatedRows: repeated(rows),
  };
}

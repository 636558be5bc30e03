// Tables as they come out of reading, written short.
import type { Reading, RecordTable } from "../../../src/core/records/index.ts";

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
    columns: heads.map(([head, unit, kind]) => ({ name: head, unit: kind === "grade" ? null : unit, kind })),
    rows: rows.map((row) => row.map((cell, i) => cellOf(cell, heads[i] ?? ["", null, "text"]))),
  };
}

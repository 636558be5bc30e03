import { importUnit } from "../readers/import-unit.ts";
import type { TableDescription } from "../table-description.ts";
import type { ColumnHead } from "./column-heads.ts";

/** Heads with what the maker says of the columns: a kind, and a unit where the file names none. */
export function headsAsSaid(heads: readonly ColumnHead[], columns: TableDescription["columns"]): ColumnHead[] {
  const said = new Map(Object.entries(columns ?? {}));
  return heads.map((head) => {
    const { kind = null, unit } = said.get(head.name) ?? {};
    return { ...head, kind, unit: head.unit ?? (unit === undefined ? null : importUnit(unit)) };
  });
}

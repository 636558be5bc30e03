import { bool, columnFromArray, float64, tableFromColumns, tableToIPC, utf8 } from "@uwdata/flechette";
import { Defect } from "../../base/index.ts";
import type { ExportedColumn, ExportedTable } from "./exported-table.ts";
import { metadataOf } from "./metadata-of.ts";

const types = { numbers: float64, texts: utf8, truths: bool } as const;

const arrowColumn = ({ values, holds }: ExportedColumn) => columnFromArray(values as unknown[], types[holds]());

/** A table as an Arrow file; unit, kind and formula stand in the metadata of each field. */
export function arrowFromTable(table: ExportedTable): Uint8Array {
  const arrow = tableFromColumns(table.columns.map((column) => [column.name, arrowColumn(column)] as const) as never);
  const fields = arrow.schema.fields.map((field, index) => {
    const column = table.columns[index];
    return { ...field, metadata: column ? new Map(metadataOf(column)) : null };
  });
  Object.assign(arrow.schema, { fields, metadata: new Map([["name", table.name]]) });
  const bytes = tableToIPC(arrow, { format: "file" });
  // Null only where bytes are handed on piece by piece, which is not asked for; an empty file would be no Arrow file.
  if (bytes === null) throw new Defect("no bytes of an Arrow table");
  return bytes;
}

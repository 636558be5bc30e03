import { parquetWriteBuffer } from "hyparquet-writer";
import type { ExportedTable } from "./exported-table.ts";
import { metadataOf } from "./metadata-of.ts";

const types = { numbers: "DOUBLE", texts: "STRING", truths: "BOOLEAN" } as const;

/** A table as a Parquet file; `columns` in the metadata of the file is JSON: unit, kind and formula by column. */
export function parquetFromTable({ name, columns }: ExportedTable): Uint8Array {
  const about = columns.map((column) => [column.name, Object.fromEntries(metadataOf(column))] as const);
  return new Uint8Array(
    parquetWriteBuffer({
      columnData: columns.map(({ name, holds, values }) => ({
        name,
        data: [...values],
        type: types[holds],
        nullable: true,
      })),
      kvMetadata: [
        { key: "name", value: name },
        { key: "columns", value: JSON.stringify(Object.fromEntries(about)) },
      ],
    }),
  );
}

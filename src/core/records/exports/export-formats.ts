// The forms in which a table leaves, each fetched when it is asked for. A new one is a file and a line here.
import type { ExportedTable } from "./exported-table.ts";

/** `description`: what stands in NAME.about.json beside the file, where the form itself cannot say it. */
export type Exported = { readonly content: string | Uint8Array; readonly description?: object };
/** `id`: what the form is asked for by, and the ending of its files. */
export type ExportFormat = { readonly id: string; readonly exported: (table: ExportedTable) => Promise<Exported> };

export const exportFormats: readonly ExportFormat[] = [
  {
    id: "csv",
    exported: async (table) => {
      const { csvFromTable, descriptionOfTable } = await import("./csv-from-table.ts");
      return { content: csvFromTable(table), description: descriptionOfTable(table) };
    },
  },
  {
    id: "json",
    exported: async (table) => ({ content: (await import("./json-from-table.ts")).jsonFromTable(table) }),
  },
  {
    id: "arrow",
    exported: async (table) => ({ content: (await import("./arrow-from-table.ts")).arrowFromTable(table) }),
  },
  {
    id: "parquet",
    exported: async (table) => ({ content: (await import("./parquet-from-table.ts")).parquetFromTable(table) }),
  },
];

/** Endings of the files of a workspace that may be read, of those that may be written, and of record tables. */
export const fileEndings = {
  readable: [".md", ".csv", ".tsv", ".txt", ".xlsx", ".ods", ".about.json"],
  writable: [".md"],
  tables: [".csv", ".tsv", ".txt", ".xlsx", ".ods"],
} as const;

/** Endings of the files of a workspace that may be read, and of those that may be written. */
export const fileEndings = {
  readable: [".md", ".csv", ".tsv", ".txt", ".xlsx", ".ods", ".about.json"],
  writable: [".md"],
} as const;

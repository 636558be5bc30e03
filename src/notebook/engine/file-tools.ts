// What reading a notebook and its files takes. Handed in, so that who has neither (a dated copy) carries none of it.
import type { joinTables } from "../../core/columns/index.ts";
import type {
  descriptionFromJson,
  descriptionWithUsual,
  editedRecords,
  editLogFromBytes,
  readRecords,
} from "../../core/records/index.ts";
import type { Notebook } from "../language/index.ts";

export type FileTools = {
  readonly notebookFromText: (text: string, path: string) => Notebook;
  /** Null where all tables are given. */
  readonly tables: {
    readonly readRecords: typeof readRecords;
    readonly editLogFromBytes: typeof editLogFromBytes;
    readonly editedRecords: typeof editedRecords;
    readonly descriptionFromJson: typeof descriptionFromJson;
    readonly descriptionWithUsual: typeof descriptionWithUsual;
    readonly joinTables: typeof joinTables;
  } | null;
};

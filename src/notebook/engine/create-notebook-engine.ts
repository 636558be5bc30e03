// The engine over the files of a workspace: reads Markdown, YAML, record files, and joins them.
import { joinTables } from "../../core/columns/index.ts";
import {
  descriptionFromJson,
  descriptionWithUsual,
  editedRecords,
  editLogFromBytes,
  readRecords,
} from "../../core/records/index.ts";
import { notebookFromText } from "../language/index.ts";
import { type EngineOptions, type NotebookEngine, notebookEngine } from "./notebook-engine.ts";

/** A new engine over the files of a workspace. */
export const createNotebookEngine = (options: EngineOptions): NotebookEngine =>
  notebookEngine(options, {
    notebookFromText,
    tables: { readRecords, editLogFromBytes, editedRecords, descriptionFromJson, descriptionWithUsual, joinTables },
  });

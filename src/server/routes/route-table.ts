// The table of routes: names only. `:name` stands for one part of the address.
import type { Workspace } from "../workspace/workspace.ts";
import { getEvents } from "./get-events.ts";
import { getFirstNotebook } from "./get-first-notebook.ts";
import { getNotebook } from "./get-notebook.ts";
import { getRecords } from "./get-records.ts";
import { getRecordsFile } from "./get-records-file.ts";
import { getTable } from "./get-table.ts";
import { getTrace } from "./get-trace.ts";
import { getWorkspace } from "./get-workspace.ts";
import { postImport } from "./post-import.ts";
import { postImportRead } from "./post-import-read.ts";
import { postNotebook } from "./post-notebook.ts";
import { postPreview } from "./post-preview.ts";
import { postRecordsEdits } from "./post-records-edits.ts";
import { postRecordsWrite } from "./post-records-write.ts";
import { postShare } from "./post-share.ts";
import { putNotebook } from "./put-notebook.ts";

export type Route = (request: Request, workspace: Workspace) => Promise<Response>;

export const routeTable: Readonly<Record<string, Route>> = {
  "GET /api/workspace": getWorkspace,
  "GET /api/notebook/:name": getNotebook,
  "PUT /api/notebook/:name": putNotebook,
  "POST /api/preview": postPreview,
  "GET /api/trace/:name/:entry": getTrace,
  "GET /api/table/:name": getTable,
  "POST /api/share": postShare,
  "GET /api/records": getRecords,
  "GET /api/records/:name": getRecordsFile,
  "POST /api/records/:name/edits": postRecordsEdits,
  "POST /api/records/:name/write": postRecordsWrite,
  "POST /api/notebook": postNotebook,
  "POST /api/import/read": postImportRead,
  "POST /api/import": postImport,
  "GET /api/first-notebook/:name": getFirstNotebook,
  "GET /api/events": getEvents,
};

// The table of routes: names only. `:name` stands for one part of the address.
import type { Workspace } from "../workspace/workspace.ts";
import { getEvents } from "./get-events.ts";
import { getNotebook } from "./get-notebook.ts";
import { getTable } from "./get-table.ts";
import { getTrace } from "./get-trace.ts";
import { getWorkspace } from "./get-workspace.ts";
import { postPreview } from "./post-preview.ts";
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
  "GET /api/events": getEvents,
};

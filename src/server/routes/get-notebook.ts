import type { Workspace } from "../workspace/workspace.ts";
import { notebookFile } from "./notebook-file.ts";
import { lastNames } from "./request-parts.ts";

/** GET /api/notebook/NAME: its text, its digest and everything computed of it. */
export async function getNotebook(request: Request, workspace: Workspace): Promise<Response> {
  const found = await notebookFile(workspace, lastNames(request, 1)?.[0]);
  return found.ok ? Response.json(await workspace.compute(found.file, found.text, new Map())) : found.answer;
}

import type { Workspace } from "../workspace/workspace.ts";
import { notebookFile } from "./notebook-file.ts";
import { lastNames } from "./request-parts.ts";

/** GET /api/trace/NAME/ENTRY: the way back from an entry's number to the raw cells. */
export async function getTrace(request: Request, workspace: Workspace): Promise<Response> {
  const [name, entry = ""] = lastNames(request, 2) ?? [];
  const found = await notebookFile(workspace, name);
  return found.ok
    ? Response.json({ entry, steps: await workspace.trace(found.file, found.text, entry) })
    : found.answer;
}

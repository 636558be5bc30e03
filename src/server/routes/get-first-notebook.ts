import { serviceProblem } from "../../core/base/index.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { lastNames, refuse } from "./request-parts.ts";
import { suggestedNotebook } from "./suggested-notebook.ts";

/** GET /api/first-notebook/NAME: a notebook to begin with, for a table that lies in the folder. */
export async function getFirstNotebook(request: Request, workspace: Workspace): Promise<Response> {
  const file = lastNames(request, 1)?.[0] ?? "";
  const bytes = file.endsWith(".md") ? null : await workspace.read(file);
  const suggestion = bytes === null ? null : await suggestedNotebook(workspace, file, bytes);
  return suggestion === null ? refuse(404, serviceProblem("file-missing", { file })) : Response.json(suggestion);
}

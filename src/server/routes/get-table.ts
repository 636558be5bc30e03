import { serviceProblem } from "../../core/base/index.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { lastNames, refuse } from "./request-parts.ts";

/** GET /api/table/NAME: the bytes of a record table as they lie in the folder, to save and never to run. */
export async function getTable(request: Request, workspace: Workspace): Promise<Response> {
  const file = lastNames(request, 1)?.[0] ?? "";
  const bytes = file.endsWith(".md") ? null : await workspace.read(file);
  if (bytes === null) return refuse(404, serviceProblem("file-name-refused", {}));
  return new Response(new Uint8Array(bytes), {
    headers: { "content-type": "application/octet-stream", "content-disposition": "attachment" },
  });
}

import { importReadingOf } from "../../notebook/share/index.ts";
import { digest } from "../workspace/digest.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { importRequest, importShape, recalled } from "./import-request.ts";

/** POST /api/import/read `{ name, base64, options, about }`: how the file would be read, what is asked of it; nothing is written. */
export async function postImportRead(request: Request, workspace: Workspace): Promise<Response> {
  const body = await importRequest(request, importShape);
  if (!body.ok) return body.answer;
  const { file, bytes } = body.value;
  const there = await workspace.read(file);
  const { result, answers, from } = await recalled(workspace, body.value);
  return Response.json(
    importReadingOf({
      bytes,
      result,
      answers,
      remembered: from,
      exists: there !== null && digest(there) !== digest(bytes),
    }),
  );
}

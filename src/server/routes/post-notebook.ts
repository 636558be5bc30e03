import { limits, serviceProblem } from "../../core/base/index.ts";
import { fileEndings } from "../workspace/file-endings.ts";
import { safePath } from "../workspace/safe-path.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { notTaken } from "./not-taken.ts";
import { jsonBody, refuse } from "./request-parts.ts";

const shape = {
  name: (value: unknown) => typeof value === "string" && !/\p{Surrogate}/u.test(value),
  text: (value: unknown) => typeof value === "string" && !/\p{Surrogate}/u.test(value),
};

/** POST /api/notebook `{ name, text }`: a new notebook of the folder, computed. One that is there is never written over. */
export async function postNotebook(request: Request, workspace: Workspace): Promise<Response> {
  const body = await jsonBody(request, shape, limits.requestBytes.value);
  if (!body.ok) return body.answer;
  const file = safePath(String(body.value.name), fileEndings.writable);
  // A notebook lies at the top of the folder, and README.md is never listed as one.
  if (file === null || file.includes("/") || file.toLowerCase() === "readme.md")
    return refuse(422, serviceProblem("notebook-name-refused", {}));
  const text = String(body.value.text);
  const outcome = await workspace.takeIn([{ name: file, bytes: new TextEncoder().encode(text), replaces: null }]);
  if (!outcome.taken) return notTaken(outcome, "notebook-exists");
  return Response.json(await workspace.compute(file, text, new Map()), { status: 201 });
}

import { limits, serviceProblem } from "../../core/base/index.ts";
import { fileEndings } from "../workspace/file-endings.ts";
import { safePath } from "../workspace/safe-path.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { jsonBody, refuse } from "./request-parts.ts";

const isDial = (pair: unknown) =>
  Array.isArray(pair) && pair.length === 2 && typeof pair[0] === "string" && Number.isFinite(pair[1]);
const shape = {
  file: (value: unknown) => typeof value === "string",
  text: (value: unknown) => typeof value === "string" && !/\p{Surrogate}/u.test(value),
  dials: (value: unknown) => Array.isArray(value) && value.length <= 1000 && value.every(isDial),
};

/** POST /api/preview `{ file, text, dials: [[name, value]] }`: computed, and nothing written. */
export async function postPreview(request: Request, workspace: Workspace): Promise<Response> {
  const body = await jsonBody(request, shape, limits.requestBytes.value);
  if (!body.ok) return body.answer;
  const file = safePath(String(body.value.file), fileEndings.writable);
  if (file === null) return refuse(404, serviceProblem("file-name-refused", {}));
  const dials = new Map(body.value.dials as readonly [string, number][]);
  return Response.json(await workspace.compute(file, String(body.value.text), dials));
}

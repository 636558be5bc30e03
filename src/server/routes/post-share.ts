import { limits, serviceProblem } from "../../core/base/index.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { notebookFile } from "./notebook-file.ts";
import { jsonBody, refuse } from "./request-parts.ts";

const isDate = (value: unknown): value is string =>
  typeof value === "string" &&
  /^\d{4}-\d\d-\d\d$/.test(value) &&
  !Number.isNaN(Date.parse(value)) &&
  new Date(value).toISOString().startsWith(value);
const shape = {
  file: (value: unknown) => typeof value === "string",
  date: (value: unknown) => typeof value === "string",
  without: (value: unknown) =>
    Array.isArray(value) && value.length <= 1000 && value.every((name) => typeof name === "string"),
};

/** POST /api/share `{ file, date, without }`: the dated copy of the saved notebook, as a file to keep. */
export async function postShare(request: Request, workspace: Workspace): Promise<Response> {
  const body = await jsonBody(request, shape, limits.requestBytes.value);
  if (!body.ok) return body.answer;
  const { file, date, without } = body.value;
  if (!isDate(date)) return refuse(422, serviceProblem("date-missing", {}));
  const found = await notebookFile(workspace, String(file));
  if (!found.ok) return found.answer;
  const copy = await workspace.share({
    file: found.file,
    text: found.text,
    date,
    without: without as readonly string[],
  });
  if ("problems" in copy) return Response.json(copy, { status: 422 });
  const name = encodeURIComponent(copy.name);
  return new Response(copy.html, {
    headers: {
      "content-type": "text/html; charset=utf-8",
      "content-disposition": `attachment; filename*=UTF-8''${name}`,
    },
  });
}

import { limits, serviceProblem } from "../../core/base/index.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { exactText, notebookFile } from "./notebook-file.ts";
import { diskProblem, jsonBody, lastNames, refuse } from "./request-parts.ts";

const shape = {
  text: (value: unknown) => typeof value === "string" && !/\p{Surrogate}/u.test(value),
  base: (value: unknown) => typeof value === "string" && /^[0-9a-f]{64}$/.test(value),
};

/** PUT /api/notebook/NAME `{ text, base }`: saved and computed again; 409 with both versions when the file is no longer `base`. */
export async function putNotebook(request: Request, workspace: Workspace): Promise<Response> {
  const found = await notebookFile(workspace, lastNames(request, 1)?.[0]);
  if (!found.ok) return found.answer;
  const body = await jsonBody(request, shape, limits.requestBytes.value);
  if (!body.ok) return body.answer;
  const { file } = found;
  const text = String(body.value.text);
  const outcome = await workspace.save(file, new TextEncoder().encode(text), String(body.value.base));
  if (outcome.saved) return Response.json(await workspace.compute(file, text, new Map()));
  if (outcome.because === "held") return refuse(423, serviceProblem("folder-held", { holder: outcome.holder }));
  if (outcome.because === "failed") return refuse(507, diskProblem(file, outcome.error));
  const theirs = exactText(outcome.theirs);
  if (theirs === null) return refuse(422, serviceProblem("file-not-text", { file }));
  return refuse(409, serviceProblem("stale-edit", { file }), {
    yours: text,
    theirs: await workspace.compute(file, theirs, new Map()),
  });
}

import { randomUUID } from "node:crypto";
import { limits } from "../../core/base/index.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { recordsAnswer, recordsFile } from "./records-file.ts";
import { jsonBody } from "./request-parts.ts";

const shape = { base: (value: unknown) => typeof value === "string" && /^[0-9a-f]{64}$/.test(value) };

/** POST /api/records/NAME/write `{ base }`: the edits are written into the file; what it held is kept beside it. */
export async function postRecordsWrite(request: Request, workspace: Workspace): Promise<Response> {
  const asked = recordsFile(request, 1);
  if (!asked.ok) return asked.answer;
  const body = await jsonBody(request, shape, limits.requestBytes.value);
  if (!body.ok) return body.answer;
  const wanted = { base: String(body.value.base), id: randomUUID() };
  return recordsAnswer(asked.file, await workspace.records.write(asked.file, wanted, asked.wish));
}

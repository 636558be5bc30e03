import { limits } from "../../core/base/index.ts";
import type { RecordEdit } from "../../core/records/index.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { isRecordEdit } from "./record-edit-shapes.ts";
import { recordsAnswer, recordsFile } from "./records-file.ts";
import { jsonBody } from "./request-parts.ts";

const MOST_EDITS = 10_000;
const shape = {
  base: (value: unknown) => typeof value === "string" && /^[0-9a-f]{64}$/.test(value),
  id: (value: unknown) => typeof value === "string" && /^[\w-]{8,64}$/.test(value),
  edits: (value: unknown) =>
    Array.isArray(value) && value.length > 0 && value.length <= MOST_EDITS && value.every(isRecordEdit),
};

/** POST /api/records/NAME/edits `{ base, id, edits }`: all made or none, on the disk before the answer. The same `id` does the work once. */
export async function postRecordsEdits(request: Request, workspace: Workspace): Promise<Response> {
  const asked = recordsFile(request, 1);
  if (!asked.ok) return asked.answer;
  const body = await jsonBody(request, shape, limits.requestBytes.value);
  if (!body.ok) return body.answer;
  const edits = body.value.edits as readonly RecordEdit[];
  const wanted = { base: String(body.value.base), id: String(body.value.id), edits };
  return recordsAnswer(asked.file, await workspace.records.edit(asked.file, wanted, asked.wish));
}

import type { Workspace } from "../workspace/workspace.ts";
import { recordsAnswer, recordsFile } from "./records-file.ts";

/** GET /api/records/NAME: some rows of a record file, raw text beside reading, as its edits make them. */
export async function getRecordsFile(request: Request, workspace: Workspace): Promise<Response> {
  const asked = recordsFile(request, 0);
  return asked.ok ? recordsAnswer(asked.file, await workspace.records.page(asked.file, asked.wish)) : asked.answer;
}

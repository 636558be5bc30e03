import { serviceProblem } from "../../core/base/index.ts";
import { descriptionWithAnswers } from "../../core/records/index.ts";
import { descriptionPath } from "../../notebook/engine/index.ts";
import { digest } from "../workspace/digest.ts";
import { safePath } from "../workspace/safe-path.ts";
import type { FileToTake } from "../workspace/take-in.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { importRequest, importShape, recalled, shapeOf } from "./import-request.ts";
import { noTable, notUnderstood } from "./no-table.ts";
import { notTaken } from "./not-taken.ts";
import { exactText } from "./notebook-file.ts";
import { refuse } from "./request-parts.ts";
import { suggestedNotebook } from "./suggested-notebook.ts";

const shape = { ...importShape, replace: (value: unknown) => value === undefined || typeof value === "boolean" };
const tableEndings = [".csv", ".tsv", ".txt", ".xlsx", ".ods"];

/**
 * POST /api/import `{ name, base64, options, about, replace? }`: the bytes become `records/NAME`, and the answers stand in the description
 * beside it; both or neither. A file of that name with other bytes is written over only when the maker says so, and kept beside.
 */
export async function postImport(request: Request, workspace: Workspace): Promise<Response> {
  const body = await importRequest(request, shape);
  if (!body.ok) return body.answer;
  const { bytes, replace } = body.value;
  const file = safePath(body.value.file, tableEndings);
  if (file === null) return refuse(422, serviceProblem("table-name-refused", {}));
  const { result, answers, text } = await recalled(workspace, body.value);
  if (result.tables.length === 0) return noTable(result);
  const about = descriptionPath(file);
  const [there, described] = [await workspace.read(file), await workspace.read(about)];
  const before = described === null ? text : exactText(described);
  if (before === null && described !== null) return refuse(422, serviceProblem("file-not-text", { file: about }));
  const fields = shapeOf(result);
  const description = descriptionWithAnswers(before, { read: answers.read, fields, more: answers.about });
  if (!description.ok) return notUnderstood(about, description.refusal);
  const wanted: FileToTake[] = [
    { name: file, bytes, replaces: there !== null && replace ? digest(there) : null },
    {
      name: about,
      bytes: new TextEncoder().encode(description.value),
      replaces: described === null ? null : digest(described),
    },
  ];
  const outcome = await workspace.takeIn(wanted);
  if (!outcome.taken) return notTaken(outcome, "table-exists");
  return Response.json({
    file,
    tables: result.tables.map(({ name }) => name),
    suggestion: await suggestedNotebook(workspace, file, bytes),
  });
}

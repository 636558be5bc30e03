// What the routes of a record file have in common: which file and rows are asked for, and how an outcome is answered.

import { serviceProblem } from "../../core/base/index.ts";
import type { PageWish } from "../../core/records/index.ts";
import { fileEndings } from "../workspace/file-endings.ts";
import type { RecordsOutcome } from "../workspace/records-desk.ts";
import { safePath } from "../workspace/safe-path.ts";
import { diskProblem, lastNames, refuse } from "./request-parts.ts";

export type RecordsAsked =
  | { readonly ok: true; readonly file: string; readonly wish: PageWish }
  | { readonly ok: false; readonly answer: Response };

const ROWS = { usual: 200, most: 1000 };

/** A whole number from 1 out of the address; the usual one where it is left out, null where it is none. */
function counted(asked: URLSearchParams, key: string, usual: number): number | null {
  const text = asked.get(key) ?? String(usual);
  return /^[1-9]\d{0,8}$/.test(text) ? Number(text) : null;
}

/** The file of `/api/records/NAME[/…]` and `?table=1&from=1&count=200&only=warned|all`. `after`: parts of the address after the name. */
export function recordsFile(request: Request, after: number): RecordsAsked {
  const name = lastNames(request, 1 + after)?.[0];
  const file = name === undefined ? null : safePath(name, fileEndings.tables);
  if (file === null) return { ok: false, answer: refuse(404, serviceProblem("file-name-refused", {})) };
  const asked = new URL(request.url).searchParams;
  const wrong = (key: string): RecordsAsked => ({
    ok: false,
    answer: refuse(422, serviceProblem("wrong-shape", { key })),
  });
  const only = asked.get("only") ?? "all";
  if (only !== "all" && only !== "warned") return wrong("only");
  const [table, from, count] = [
    counted(asked, "table", 1),
    counted(asked, "from", 1),
    counted(asked, "count", ROWS.usual),
  ];
  if (table === null) return wrong("table");
  if (from === null) return wrong("from");
  if (count === null || count > ROWS.most) return wrong("count");
  return { ok: true, file, wish: { table, from, count, only } };
}

/** An edit made on what is no longer so is a conflict; another that is refused is at fault itself. */
const CONFLICTS = new Set(["edit-stale"]);

/** The answer to an outcome: the page, or its problem with the digest that the file has now. */
export function recordsAnswer(file: string, outcome: RecordsOutcome): Response {
  if (outcome.done) return Response.json(outcome.page);
  switch (outcome.because) {
    case "missing":
      return refuse(404, serviceProblem("file-missing", { file }));
    case "held":
      return refuse(423, serviceProblem("folder-held", { holder: outcome.holder }));
    case "stale":
      return refuse(409, serviceProblem("stale-edit", { file }), { theirs: outcome.theirs });
    case "failed":
      return refuse(507, diskProblem(file, outcome.error));
    case "refused": {
      const { problem, theirs } = outcome;
      return Response.json({ problems: [problem], theirs }, { status: CONFLICTS.has(problem.code) ? 409 : 422 });
    }
  }
}

// What the graph has come to, entry by entry in file order, as plain JSON.
import { type Problem, problem } from "../../core/base/index.ts";
import { type Entry, type Notebook, placeInFile } from "../language/index.ts";
import type { CellPlan, Inputs, LocalProblem } from "./cell.ts";
import type { EntryPart } from "./entry-kind.ts";
import type { EntryResult, NotebookResult } from "./entry-result.ts";
import type { NotebookPlan, PlannedEntry } from "./notebook-plan.ts";
import type { PartCache } from "./part-cache.ts";
import type { Surroundings } from "./surroundings.ts";

type Computing = {
  readonly notebook: Notebook;
  readonly plan: NotebookPlan;
  readonly inputs: Inputs;
  readonly around: Surroundings;
  readonly views: PartCache;
  readonly path: string;
  readonly asOf: string | null;
  readonly version: string;
};

/** A problem of an entry's own text at its place in the file. */
function placed(local: LocalProblem, entry: Entry, base: number, file: string): Problem {
  const place = local.span
    ? placeInFile(entry, { from: local.span.from + base, to: local.span.to + base })
    : { line: entry.line, column: 1, length: 3 };
  return problem(local.code, local.facts as never, { ...place, file }, local.suggestion);
}

/** Each problem once, in the order of the text. */
function inOrder(found: readonly Problem[]): readonly Problem[] {
  const once = new Map(found.map((each) => [JSON.stringify([each.line, each.column, each.code, each.sentence]), each]));
  return [...once.values()].sort((a, b) => a.line - b.line || a.column - b.column);
}

/** The language places a name that is taken at the name itself; the fence need not say it again. */
const saidAlready = (entry: Entry, local: LocalProblem): boolean =>
  local.span === null && entry.problems.some((each) => each.code === local.code);

function problemsOf(
  { entry, plan }: PlannedEntry,
  inputs: Inputs,
  planOf: (id: string) => CellPlan | undefined,
  file: string,
): readonly Problem[] {
  const ofCells = plan.cells.flatMap((own) => {
    const base = planOf(own.cell.id)?.base ?? own.base;
    const value = inputs.get(own.cell);
    const local = value.ok ? (value.remarks ?? []) : value.problems;
    return local.map((each) => placed(each, entry, base, file));
  });
  return inOrder([
    ...entry.problems.map((each) => ({ ...each, file })),
    ...plan.problems.filter((each) => !saidAlready(entry, each)).map((each) => placed(each, entry, 0, file)),
    ...ofCells,
  ]);
}

/** What the entry shows; a fault of ours while showing it is that entry's alone. */
function partOf({ entry, key, kind }: PlannedEntry, computing: Computing): EntryPart | "fault" | null {
  if (!kind) return null;
  const seen = `${entry.body}\u0000${computing.around.tables.join(" ")}`;
  try {
    return computing.views(key, seen, computing.inputs, (inputs) => kind.view(entry, key, inputs, computing.around));
  } catch {
    return "fault";
  }
}

function entryResult(planned: PlannedEntry, computing: Computing): EntryResult {
  const { entry, key } = planned;
  const found = problemsOf(planned, computing.inputs, (id) => computing.plan.cells.get(id), computing.path);
  const part = partOf(planned, computing);
  const fault: LocalProblem = { code: "defect", facts: { id: `view of ${key}` }, span: null };
  const problems = part === "fault" ? [...found, placed(fault, entry, 0, computing.path)] : found;
  const { view = { kind: "problem", problems } as const, ...rest } = part === "fault" || part === null ? {} : part;
  return { name: entry.name, kind: entry.kind, line: entry.line, asked: entry.body, ...rest, problems, view };
}

/** The result of a whole notebook. Problems that only say what an entry waits for stay with the entry. */
export function notebookResult(computing: Computing): NotebookResult {
  const { notebook, plan, path, asOf, version } = computing;
  const entries = plan.entries.map((planned) => entryResult(planned, computing));
  const own = notebook.problems.map((each) => ({ ...each, file: path }));
  const found = [...own, ...entries.flatMap((entry) => entry.problems)];
  const roots = found.filter((each) => each.code !== "waits-for");
  return {
    notebook: path,
    title: notebook.title,
    asOf,
    version,
    parts: notebook.parts.map((part) =>
      part.is === "prose" ? { is: "prose", text: part.prose.text } : { is: "entry", name: part.entry.name },
    ),
    entries,
    problems: inOrder(roots.length > 0 ? roots : found),
  };
}

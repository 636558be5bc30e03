import type { Entry, RecordsLine } from "../../../language/index.ts";
import { type CellPlan, computed, failed, type LocalProblem, needs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import { sourcePlans } from "../../source-plans.ts";
import type { SourceLine } from "../../source-table.ts";
import type { Surroundings } from "../../surroundings.ts";
import type { Line, RecordsSpec } from "./records-spec.ts";
import { runRecords } from "./run-records.ts";

const linesOf = <S extends RecordsLine["says"]>(lines: readonly RecordsLine[], says: S): readonly Line<S>[] =>
  lines.filter((line): line is Line<S> => line.says === says);

/** The lines of a records entry as one record table to be; a second `from` or a missing one is a problem. */
export function checkRecords(entry: Entry, _key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "records") return onlyProblems();
  const { lines } = entry.syntax;
  const [from, second] = linesOf(lines, "from");
  if (!from)
    return onlyProblems({ code: "syntax", facts: { found: "This entry", expected: "a line `from FILE`" }, span: null });
  const problems: LocalProblem[] = second ? [{ code: "name-taken", facts: { name: entry.name }, span: second }] : [];
  const source = (line: Line<"from"> | Line<"join">): SourceLine => ({
    file: line.file,
    path: around.pathOf(line.file),
    span: { from: line.from, to: line.to },
    sheet: line.says === "from" ? line.sheet : null,
    table: line.says === "from" ? line.table : null,
  });
  const corrections = linesOf(lines, "correct");
  for (const line of corrections) {
    if (!around.rigs.has(line.by.name))
      problems.push({ code: "unknown-name", facts: { name: line.by.name }, span: line.by });
  }
  const spec: RecordsSpec = {
    name: entry.name,
    from: source(from),
    joins: linesOf(lines, "join").map((line) => ({ ...source(line), on: line.on })),
    piece: linesOf(lines, "piece-is")[0] ?? null,
    shared: linesOf(lines, "pieces-share")[0] ?? null,
    finished: linesOf(lines, "finished-on")[0] ?? null,
    corrections: corrections.filter((line) => around.rigs.has(line.by.name)),
    leaveOut: linesOf(lines, "leave-out"),
  };
  return { cells: tablePlans(spec, around), problems, shows: cells.table(entry.name) };
}

function tablePlans(spec: RecordsSpec, around: Surroundings): readonly CellPlan[] {
  const given = around.given?.get(spec.name);
  const files = around.given ? [] : [spec.from, ...spec.joins];
  const table = cells.table(spec.name);
  const heads: CellPlan = {
    cell: cells.heads(spec.name),
    says: spec.name,
    needs: [needs(table)],
    key: "heads",
    base: 0,
    run: (inputs) => {
      const made = inputs.get(table);
      return made.ok ? computed([...made.value.columns.keys()]) : failed();
    },
  };
  const plan: CellPlan = {
    cell: table,
    says: spec.name,
    key: JSON.stringify([spec, around.given !== null]),
    base: 0,
    needs: [
      ...files.map((file) => needs(cells.reading(file.path))),
      ...(around.given ? [] : spec.corrections.map((line) => needs(cells.rig(line.by.name), line.by.name, line.by))),
    ],
    run: (inputs) =>
      around.given
        ? given
          ? computed(given)
          : failed({ code: "missing-file", facts: { file: spec.from.file }, span: spec.from.span })
        : runRecords(spec, inputs, around.tools),
  };
  return [...files.flatMap((file) => sourcePlans(file.path, around)), plan, heads];
}

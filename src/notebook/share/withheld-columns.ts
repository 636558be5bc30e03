// Holding columns back from a copy: the column, whatever is computed from it, and every sentence that asks about either.
import type { Column, ColumnTable } from "../../core/columns/index.ts";
import { cellsBehind, columnName } from "../../core/columns/index.ts";
import type { Entry } from "../language/index.ts";
import { notebookFromText } from "../language/index.ts";
import type { CopyProblem } from "./copy-problems.ts";
import { copyProblem } from "./copy-problems.ts";
import { dependents, touches } from "./dependents.ts";
import { waysToSolve } from "./ways-to-solve.ts";

export type Withheld = {
  readonly notebookText: string;
  readonly tables: ReadonlyMap<string, ColumnTable>;
  readonly withheld: number;
  readonly problems: readonly CopyProblem[];
  readonly warnings: readonly CopyProblem[];
};

type Cut = { readonly from: number; readonly to: number };

const ROLES: ReadonlyMap<string, string> = new Map([
  ["join", "the tables are joined on it"],
  ["piece-is", "it names the pieces"],
  ["pieces-share", "pieces share it"],
  ["finished-on", "it says when instruments were finished"],
]);

/** From the start of its line to the end of it, line end included. */
function wholeLines(text: string, from: number, to: number): Cut {
  const end = text.indexOf("\n", to);
  return { from: text.lastIndexOf("\n", from - 1) + 1, to: end < 0 ? text.length : end + 1 };
}

function cutsOf(text: string, entry: Entry, hidden: ReadonlySet<string>, problems: CopyProblem[]): readonly Cut[] {
  const whole = wholeEntry(text, entry);
  if (entry.syntax?.kind === "records") {
    return entry.syntax.lines.flatMap((line) => {
      if (!("column" in line || "on" in line) || !touches(line, hidden)) return [];
      const use = ROLES.get(line.says);
      const column = "column" in line ? line.column.name : line.on.name;
      if (use !== undefined) problems.push(copyProblem("column-in-use", { column, use }));
      return [wholeLines(text, entry.bodyFrom + line.from, entry.bodyFrom + Math.max(line.from, line.to - 1))];
    });
  }
  if (entry.syntax?.kind === "columns") {
    const lines = entry.syntax.columns.filter((line) => hidden.has(line.name.name) || touches(line.expression, hidden));
    if (lines.length === entry.syntax.columns.length) return lines.length === 0 ? [] : [whole];
    return lines.map((line) =>
      wholeLines(text, entry.bodyFrom + line.from, entry.bodyFrom + Math.max(line.from, line.to - 1)),
    );
  }
  const mentioned =
    entry.syntax === null ? [...hidden].some((name) => entry.body.includes(name)) : touches(entry.syntax, hidden);
  return mentioned || hidden.has(entry.name) ? [whole] : [];
}

/** Fence to fence. */
function wholeEntry(text: string, entry: Entry): Cut {
  const opening = text.lastIndexOf("\n", Math.max(0, entry.bodyFrom - 2)) + 1;
  const closing = text.indexOf("\n", entry.bodyTo);
  return { from: opening, to: closing < 0 ? text.length : closing + 1 };
}

const without = (text: string, cuts: readonly Cut[]) =>
  [...cuts].sort((a, b) => b.from - a.from).reduce((kept, cut) => kept.slice(0, cut.from) + kept.slice(cut.to), text);

function withoutColumns(table: ColumnTable, hidden: ReadonlySet<string>): ColumnTable {
  return {
    ...table,
    columns: new Map([...table.columns].filter(([name]) => !hidden.has(name))),
    cellAt: (column, row) => (hidden.has(column) ? null : table.cellAt(column, row)),
    cellsAt: (column, row) => (hidden.has(column) ? [] : cellsBehind(table, column, row)),
    notes: table.notes.filter(
      (note) =>
        ![...hidden].some((name) => note.includes(name) || note.includes(table.columns.get(name)?.header ?? name)),
    ),
  };
}

/** A mean of readings and its readings go together: either would give the other away. */
function tiedReadings(table: ColumnTable, asked: ReadonlySet<string>): readonly string[] {
  return [...table.columns.values()].flatMap(({ name, origin }) => {
    if (origin.from !== "formula" || !origin.readings) return [];
    if (asked.has(name)) return origin.parents;
    return origin.parents.some((reading) => asked.has(reading)) ? [name, ...origin.parents] : [];
  });
}

const isFromFile = (column: Column | undefined): column is Column =>
  column !== undefined && column.origin.from === "file";

function rawTexts(tables: ReadonlyMap<string, ColumnTable>, asked: ReadonlySet<string>): ReadonlySet<string> {
  const texts = new Set<string>();
  for (const table of tables.values())
    for (const name of asked)
      if (table.columns.has(name))
        for (let row = 0; row < table.rowCount; row++)
          for (const cell of cellsBehind(table, name, row)) {
            const raw = cell.raw.trim();
            if (raw.length >= 3) texts.add(raw);
          }
  return texts;
}

function withoutStops(word: string): string {
  let end = word.length;
  while (end > 0 && ".!?".includes(word.charAt(end - 1))) end--;
  return word.slice(0, end);
}

/** Places in the prose that name a hidden column or quote one of its cells; words of three letters or more. */
function mentions(
  text: string,
  file: string,
  hidden: ReadonlySet<string>,
  texts: ReadonlySet<string>,
): readonly CopyProblem[] {
  return notebookFromText(text, file).parts.flatMap((part) => {
    if (part.is !== "prose") return [];
    const words = new Set(part.prose.text.split(/[\s,;:()"]+/).flatMap((word) => [word, withoutStops(word)]));
    const named = [...hidden].find(
      (name) => part.prose.text.includes(name) || part.prose.text.toLowerCase().includes(name.replaceAll("_", " ")),
    );
    const quoted = [...words].find((word) => texts.has(word));
    return named === undefined && quoted === undefined
      ? []
      : [copyProblem("prose-mentions", { column: named ?? [...hidden][0] ?? "", line: part.prose.line })];
  });
}

/** What is left of a notebook and its tables without some columns, and what stands in the way. Unchanged when none are named. */
export function withheldColumns({
  notebookText,
  file,
  tables,
  without: names,
}: {
  readonly notebookText: string;
  readonly file: string;
  readonly tables: ReadonlyMap<string, ColumnTable>;
  readonly without: readonly string[];
}): Withheld {
  if (names.length === 0) return { notebookText, tables, withheld: 0, problems: [], warnings: [] };
  const problems: CopyProblem[] = [];
  const exists = (name: string) => [...tables.values()].some((table) => table.columns.has(name));
  const asked = new Set(names.map((name) => (exists(name) ? name : columnName(name))));
  for (const name of asked) if (!exists(name)) problems.push(copyProblem("unknown-column", { column: name }));
  for (const table of tables.values()) for (const name of tiedReadings(table, asked)) asked.add(name);
  const notebook = notebookFromText(notebookText, file);
  const hidden = dependents(notebook.entries, asked);
  const cuts = notebook.entries.flatMap((entry) => cutsOf(notebookText, entry, hidden, problems));
  for (const table of tables.values()) {
    const first = table.rows[0];
    const pieces = [...asked].find(
      (name) =>
        isFromFile(table.columns.get(name)) && first !== undefined && table.cellAt(name, 0)?.raw.trim() === first.piece,
    );
    if (pieces !== undefined)
      problems.push(copyProblem("column-in-use", { column: pieces, use: "it names the pieces" }));
    problems.push(...waysToSolve(table, asked, hidden));
  }
  const text = without(notebookText, cuts);
  return {
    notebookText: text,
    tables: new Map([...tables].map(([name, table]) => [name, withoutColumns(table, hidden)])),
    withheld: asked.size,
    problems,
    warnings: mentions(text, file, hidden, rawTexts(tables, asked)),
  };
}

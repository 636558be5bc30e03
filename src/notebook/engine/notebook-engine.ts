// A notebook, kept computed: text in, results out, and only what an edit touched is computed again.
import type { Trace } from "../../core/base/index.ts";
import { type ColumnTable, withColumn } from "../../core/columns/index.ts";
import type { Entry, Notebook } from "../language/index.ts";
import { type Cell, type CellPlan, type Computed, failed, type Inputs } from "./cell.ts";
import { cells } from "./cells.ts";
import type { NotebookResult } from "./entry-result.ts";
import type { FileTools } from "./file-tools.ts";
import { gridCells } from "./grid-cells.ts";
import { knownNeeds, type NotebookPlan, notebookPlan } from "./notebook-plan.ts";
import { notebookResult } from "./notebook-result.ts";
import { partCache } from "./part-cache.ts";
import { planCache } from "./plan-cache.ts";
import { type ReactiveGraph, reactiveGraph, type Schedule } from "./reactive-graph.ts";
import { resolvedPath } from "./resolved-path.ts";
import { entryKeys, type Surroundings, surroundingsOf } from "./surroundings.ts";
import { traceOf } from "./trace-of.ts";

export type EngineOptions = {
  /** The bytes of a file, counted from the folder of the workspace; null when there is none. */
  readonly readFile: (path: string) => Promise<Uint8Array | null>;
  /** Runs a job soon; without it, as soon as what runs now is done. */
  readonly schedule?: Schedule;
  readonly asOf: string | null;
  readonly version: string;
  /** How results and problems name the notebook's file; without it, by its place in the workspace. */
  readonly shownAs?: string;
  /** Joined tables in place of files: in a dated copy. */
  readonly tables?: ReadonlyMap<string, ColumnTable>;
  /** Notebooks that lead here by `use`: one of them again would be a ring. */
  readonly usedBy?: readonly string[];
};

export type NotebookEngine = {
  readonly update: (text: string, path: string) => void;
  readonly settled: () => Promise<void>;
  readonly result: () => NotebookResult;
  /** Told once for each wave that changed something, when it has come to rest. */
  readonly subscribe: (listener: () => void) => () => void;
  /** Turns a dial; the value is in SI. */
  readonly setDial: (name: string, value: number) => void;
  /** A file has changed (all files, without a path): it is read again. */
  readonly refresh: (path?: string) => void;
  /** Record tables and rig tables ("rig NAME") by name, formula columns after the measured ones. */
  readonly tables: () => ReadonlyMap<string, ColumnTable>;
  readonly trace: (entry: string) => Trace;
  /** How often a cell was computed: what tests of incremental work look at. */
  readonly runs: (cell: string) => number;
  readonly dispose: () => void;
};

/** What a cell holds before it was ever computed. */
const NOTHING = failed();
const soon: Schedule = (job) => void Promise.resolve().then(job);

/** A new engine that reads with the tools given. */
export function notebookEngine(options: EngineOptions, tools: FileTools): NotebookEngine {
  const listeners = new Set<() => void>();
  let told = true;
  const graph: ReactiveGraph = reactiveGraph({
    schedule: options.schedule ?? soon,
    onChange: () => {
      if (!told) return;
      told = false;
      void graph.settled().then(() => {
        told = true;
        for (const listener of listeners) listener();
      });
    },
  });
  const views = partCache();
  const grid = gridCells();
  const planned = planCache();
  const dialStands = new Map<string, number>();
  const generations = new Map<string, number>();
  let everything = 0;
  const defined = new Map<string, string>();
  let path = "";
  let notebook: Notebook = { text: "", title: "", frontMatter: {}, parts: [], entries: [], problems: [] };
  let keys: ReadonlyMap<Entry, string> = new Map();
  let around: Surroundings = surroundings();
  let plan: NotebookPlan = { entries: [], cells: new Map() };

  function surroundings(): Surroundings {
    return surroundingsOf(notebook, keys, {
      pathOf: (file) => resolvedPath(path, file),
      readFile: options.readFile,
      tools: tools.tables,
      dialStands,
      given: options.tables ?? null,
      asOf: options.asOf,
      generation: (file) => everything + (generations.get(file) ?? 0),
      otherTables,
      gridCells: grid,
      changes: JSON.stringify([path, everything, ...generations]),
    });
  }

  function otherTables(file: string): Promise<ReadonlyMap<string, ColumnTable> | null> | null {
    const usedBy = [...(options.usedBy ?? []), path];
    if (usedBy.includes(file)) return null;
    return options.readFile(file).then(async (bytes) => {
      if (bytes === null) return null;
      const other = notebookEngine({ ...options, usedBy }, tools);
      other.update(new TextDecoder().decode(bytes), file);
      await other.settled();
      const tables = other.tables();
      other.dispose();
      return tables;
    });
  }

  const holds = (cell: Cell<unknown>): Computed<unknown> => {
    const value = graph.value(cell.id) as Computed<unknown> | undefined;
    if (value !== undefined) return value;
    return graph.error(cell.id) === undefined
      ? NOTHING
      : failed({ code: "defect", facts: { id: cell.id }, span: null });
  };
  const current: Inputs = { get: <T>(cell: Cell<T>) => holds(cell) as Computed<T> };

  function define(cell: CellPlan): void {
    const known = knownNeeds(cell, plan.cells).map((need) => need.cell.id);
    const unique = [...new Set(known)];
    graph.set(cell.cell.id, unique, (...values) => {
      const byId = new Map(unique.map((id, i) => [id, values[i] as Computed<unknown>]));
      const inputs: Inputs = { get: <T>(each: Cell<T>) => (byId.get(each.id) ?? failed()) as Computed<T> };
      const fault = () => failed({ code: "defect", facts: { id: cell.cell.id }, span: null });
      try {
        const made = cell.run(inputs);
        return made instanceof Promise ? made.catch(fault) : made;
      } catch {
        return fault();
      }
    });
  }

  function replan(): void {
    keys = entryKeys(notebook);
    around = surroundings();
    plan = notebookPlan(notebook, keys, around, planned);
    for (const id of [...defined.keys()]) {
      if (plan.cells.has(id)) continue;
      graph.remove(id);
      defined.delete(id);
    }
    for (const [id, cell] of plan.cells) {
      const key = `${cell.key}\u0000${knownNeeds(cell, plan.cells)
        .map((need) => need.cell.id)
        .join("\u0000")}`;
      if (defined.get(id) === key) continue;
      defined.set(id, key);
      define(cell);
    }
  }

  function tables(): ReadonlyMap<string, ColumnTable> {
    const found = new Map<string, ColumnTable>();
    for (const name of [...around.tables, ...[...around.rigs].map((rig) => `rig ${rig}`)]) {
      const table = current.get(cells.table(name));
      if (!table.ok) continue;
      const columns = [...(around.formulas.get(name) ?? [])].flatMap((column) => {
        const made = current.get(cells.column(name, column));
        return made.ok ? [made.value] : [];
      });
      found.set(
        name,
        columns.reduce((all, column) => withColumn(all, column), table.value),
      );
    }
    return found;
  }

  function trace(name: string): Trace {
    const planned =
      plan.entries.find(({ entry }) => entry.name === name && entry.kind !== "records" && entry.kind !== "columns") ??
      plan.entries.find(({ entry }) => entry.name === name);
    if (!planned) return { steps: [] };
    const answer = current.get(cells.answer(planned.key));
    if (answer.ok) return traceOf(answer.value.finding, answer.value.table, answer.value.columns);
    const part = planned.kind?.view(planned.entry, planned.key, current, around);
    return part?.view.kind === "amount" ? part.view.trace : { steps: [] };
  }

  return {
    update: (text, newPath) => {
      if (text === notebook.text && newPath === path) return;
      path = newPath;
      notebook = tools.notebookFromText(text, newPath);
      replan();
    },
    settled: graph.settled,
    result: () =>
      notebookResult({
        notebook,
        plan,
        inputs: current,
        around,
        views,
        path: options.shownAs ?? path,
        asOf: options.asOf,
        version: options.version,
      }),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    setDial: (name, value) => {
      if (!Number.isFinite(value) || dialStands.get(name) === value) return;
      dialStands.set(name, value);
      replan();
    },
    refresh: (file) => {
      if (file === undefined) everything++;
      else generations.set(file, (generations.get(file) ?? 0) + 1);
      replan();
    },
    tables,
    trace,
    runs: graph.runs,
    dispose: graph.dispose,
  };
}

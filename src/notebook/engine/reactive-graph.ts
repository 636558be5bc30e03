// Our wrapper over the reactive runtime: own scheduler, `settled`, equality cut-off, no globals. Private names used:
// _computeSoon and _computing (the version is pinned; a test guards both).
import { Runtime, type Variable } from "@observablehq/runtime";
import { Defect } from "../../core/base/index.ts";
import { sameValue } from "./same-value.ts";

/** Runs a job soon, after what is running now; never an animation frame, which a hidden tab does not get. */
export type Schedule = (job: () => void) => void;

export type GraphOptions = {
  readonly schedule: Schedule;
  readonly equal?: (a: unknown, b: unknown) => boolean;
  readonly onChange?: (cell: string) => void;
};

type CellState = {
  runs: number;
  state: "new" | "ok" | "error";
  value: unknown;
  error: unknown;
  kept: unknown;
  has: boolean;
  variable: Variable;
};

/** A graph of named cells. */
export type ReactiveGraph = {
  /** Defines or redefines a cell; `run` is called with the values of `inputs` once they have changed. */
  readonly set: (cell: string, inputs: readonly string[], run: (...values: unknown[]) => unknown) => void;
  readonly remove: (cell: string) => void;
  /** Resolves when nothing is queued and no cell is computing. */
  readonly settled: () => Promise<void>;
  readonly value: (cell: string) => unknown;
  readonly error: (cell: string) => unknown;
  /** How often the cell was really computed: what the tests of incremental work look at. */
  readonly runs: (cell: string) => number;
  readonly dispose: () => void;
};

/** A new graph. An input that is no cell is an error of the cell that names it, never a global of the surroundings. */
export function reactiveGraph({ schedule, equal = sameValue, onChange }: GraphOptions): ReactiveGraph {
  const runtime = new Runtime({}, (name) => {
    throw new Defect(`${name} is no cell of this notebook`);
  });
  if (typeof Reflect.get(runtime, "_computeSoon") !== "function")
    throw new Defect("the runtime has changed: no _computeSoon");
  const cells = new Map<string, CellState>();
  const busy = new Set<string>();
  let waiting: (() => void)[] = [];
  const look = (): void => {
    if (runtime._computing || busy.size > 0) return;
    const ready = waiting;
    waiting = [];
    for (const done of ready) done();
  };
  Object.defineProperty(runtime, "_computeSoon", {
    value: () =>
      new Promise<void>((resolve) => schedule(() => resolve()))
        .then(() => (runtime._disposed ? undefined : runtime._computeNow()))
        .then(look),
  });
  const main = runtime.module();

  const newCell = (name: string): CellState => {
    const cell: CellState = {
      runs: 0,
      state: "new",
      value: undefined,
      error: undefined,
      kept: undefined,
      has: false,
      variable: main.variable({
        pending: () => void busy.add(name),
        fulfilled: (value) => {
          busy.delete(name);
          const changed = cell.state !== "ok" || cell.value !== value;
          Object.assign(cell, { state: "ok", value });
          if (changed) onChange?.(name);
          look();
        },
        rejected: (error) => {
          busy.delete(name);
          Object.assign(cell, { state: "error", value: undefined, error });
          onChange?.(name);
          look();
        },
      }),
    };
    cells.set(name, cell);
    return cell;
  };

  const set: ReactiveGraph["set"] = (name, inputs, run) => {
    const cell = cells.get(name) ?? newCell(name);
    let lastInputs: unknown[] | null = null;
    let lastValue: unknown;
    const define = (...now: unknown[]): unknown => {
      const before = lastInputs;
      if (before && now.every((value, i) => Object.is(value, before[i]))) return lastValue;
      cell.runs++;
      lastInputs = null;
      const keep = (value: unknown): unknown => {
        lastInputs = now;
        if (!cell.has || !equal(value, cell.kept)) cell.kept = value;
        cell.has = true;
        lastValue = cell.kept;
        return lastValue;
      };
      const made = run(...now);
      return made instanceof Promise ? made.then(keep) : keep(made);
    };
    cell.variable.define(name, inputs, define as (...values: never[]) => unknown);
  };

  return {
    set,
    remove: (name) => {
      cells.get(name)?.variable.delete();
      cells.delete(name);
      busy.delete(name);
    },
    settled: () =>
      new Promise((resolve) => {
        waiting.push(resolve);
        look();
      }),
    value: (name) => cells.get(name)?.value,
    error: (name) => cells.get(name)?.error,
    runs: (name) => cells.get(name)?.runs ?? 0,
    dispose: () => runtime.dispose(),
  };
}

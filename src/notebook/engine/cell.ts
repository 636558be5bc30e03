// The cells of a notebook's graph: their names, what they hold, and how one says that it could not be computed.
import type { ProblemCode } from "../../core/base/index.ts";
import type { Column, ColumnTable } from "../../core/columns/index.ts";
import type { Span } from "../../core/formula/index.ts";

/** A problem with its place in the entry's own text, so that moving the entry changes nothing; null is the entry's first line. */
export type LocalProblem = {
  readonly code: ProblemCode;
  readonly facts: Readonly<Record<string, string | number>>;
  readonly span: Span | null;
  readonly suggestion?: string;
};

/** What a cell holds: a value, perhaps with remarks, or the problems that kept it from having one. */
export type Computed<T> =
  | { readonly ok: true; readonly value: T; readonly remarks?: readonly LocalProblem[] }
  | { readonly ok: false; readonly problems: readonly LocalProblem[] };

export const computed = <T>(value: T, remarks?: readonly LocalProblem[]): Computed<T> =>
  remarks?.length ? { ok: true, value, remarks } : { ok: true, value };
export const failed = (
  ...problems: readonly LocalProblem[]
): { readonly ok: false; readonly problems: readonly LocalProblem[] } => ({ ok: false, problems });
/** The cell needs `name`, which has a problem of its own. */
export const waitsFor = (name: string, span: Span | null): LocalProblem => ({
  code: "waits-for",
  facts: { name },
  span,
});

/** A cell's name together with the type of what it holds. */
export type Cell<T> = { readonly id: string; readonly holds?: T };

/** A value as the graph carries it: SI, how it is shown, and its standard uncertainty. */
export type CellAmount = {
  readonly value: number | null;
  readonly unit: string;
  readonly uncertainty: number | null;
  readonly contributions?: ReadonlyMap<string, number>;
};

/** The table of a question with just the columns that it names. */
export type Slice = { readonly table: ColumnTable; readonly formulas: readonly Column[] };

/** One thing a cell needs, with the place that names it (for placing a ring). */
export type Need = { readonly cell: Cell<unknown>; readonly span: Span | null; readonly says: string };

/** What the run of a cell reads its inputs by. */
export type Inputs = { readonly get: <T>(cell: Cell<T>) => Computed<T> };

/** One cell to be: `key` says everything its `run` closes over, so that an equal key means nothing to redo. */
export type CellPlan = {
  readonly cell: Cell<unknown>;
  /** Its name in sentences. */
  readonly says: string;
  readonly needs: readonly Need[];
  readonly key: string;
  /** Offset within the entry's body that spans of its problems count from. */
  readonly base: number;
  readonly run: (inputs: Inputs) => Computed<unknown> | Promise<Computed<unknown>>;
};

/** A need without a place of its own. */
export const needs = (cell: Cell<unknown>, says = cell.id, span: Span | null = null): Need => ({ cell, span, says });

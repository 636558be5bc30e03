// What everybody needs to know of a kind of entry: one record each, walked by the engine, the words page and completion.
import type { View } from "../../core/base/index.ts";
import type { Entry, EntryKindId } from "../language/index.ts";
import type { Cell, CellPlan, Inputs, LocalProblem } from "./cell.ts";
import type { EntryResult } from "./entry-result.ts";
import type { Surroundings } from "./surroundings.ts";

/** What an entry adds to the graph. `shows` is the cell its view is made from; null when there is nothing to show. */
export type EntryPlan = {
  readonly cells: readonly CellPlan[];
  readonly problems: readonly LocalProblem[];
  readonly shows: Cell<unknown> | null;
};

/** What an entry shows once its cells are computed. */
export type EntryPart = Pick<EntryResult, "finding" | "value" | "table"> & { readonly view: View };

export type EntryKind = {
  readonly id: EntryKindId;
  readonly title: string;
  readonly sentence: string;
  /** A body that is read without problems. */
  readonly example: string;
  /** Syntax to cells: nothing is computed here. `key` is the entry's key in its notebook. */
  readonly check: (entry: Entry, key: string, around: Surroundings) => EntryPlan;
  /** The calculation that its cells run. */
  readonly run: (...given: never[]) => unknown;
  /** What its cells hold, as something to show; null while it has only problems. */
  readonly view: (entry: Entry, key: string, inputs: Inputs, around: Surroundings) => EntryPart | null;
};

/** The plan of an entry that has only problems. */
export const onlyProblems = (...problems: readonly LocalProblem[]): EntryPlan => ({ cells: [], problems, shows: null });

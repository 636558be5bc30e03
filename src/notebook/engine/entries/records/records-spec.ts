// What a records entry says, sorted by what the lines are for.
import type { RecordsLine } from "../../../language/index.ts";
import type { SourceLine } from "../../source-table.ts";

/** Lines of one sort. */
export type Line<S extends RecordsLine["says"]> = Extract<RecordsLine, { readonly says: S }>;
export type RecordsSpec = {
  readonly name: string;
  readonly from: SourceLine;
  readonly joins: readonly (SourceLine & { readonly on: Line<"join">["on"] })[];
  readonly piece: Line<"piece-is"> | null;
  readonly shared: Line<"pieces-share"> | null;
  readonly finished: Line<"finished-on"> | null;
  readonly corrections: readonly Line<"correct">[];
  readonly leaveOut: readonly Line<"leave-out">[];
};

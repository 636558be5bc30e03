import type { Caution, Check, Estimate, Outcome, RowRef, SetAside, Verdict } from "../base/index.ts";
import type { Column } from "../columns/index.ts";

/** What one kind of rule says of one set of records: the verdict, the numbers behind it, and what it would take to tell. */
export type Judgement = {
  /** As one of all the questions asked of these records. */
  readonly verdict: Verdict;
  /** By the interval that is shown, as if nothing else had been asked. */
  readonly alone: Verdict;
  /** What the records show, as a clause: "the slope is −0.080 mm/GPa (−0.099 to −0.061)". */
  readonly shows: string;
  /** Records more that would settle it if they go on like these; null where that cannot be said. */
  readonly more: number | null;
  readonly estimate: readonly Estimate[];
  readonly checks: readonly Check[];
  readonly cautions: readonly Caution[];
  readonly rows: { readonly used: readonly RowRef[]; readonly setAside: readonly SetAside[] };
  /** The columns that the answer rests on, for the trace. */
  readonly columns: readonly Column[];
  readonly methodId: string;
};

export type JudgementOutcome = Outcome<Judgement>;

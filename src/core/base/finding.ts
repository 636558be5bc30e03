// The typed answer. Plain JSON: no methods, units in canonical spelling, numbers never rounded.
import type { Caution } from "./cautions.ts";
import type { Check } from "./check.ts";
import type { Estimate } from "./estimate.ts";
import type { Picture } from "./picture.ts";
import type { RowRef, SetAside } from "./row-ref.ts";
import type { Source } from "./source.ts";
import type { Trace } from "./trace.ts";

/** Which kinds of answer there are. A new kind does not compile until every consumer has answered for it. */
export type AnswerKind =
  | "relation"
  | "comparison"
  | "agreement"
  | "prediction"
  | "ranking"
  | "words"
  | "verdict"
  | "rig";

/** The three words of a verdict. */
export type Verdict = "kept" | "broken" | "cannot-tell";

/** The method a finding used, and why it was chosen. */
export type MethodUse = {
  readonly id: string;
  readonly name: string;
  readonly source: Source;
  readonly chosenBecause: string;
};

/** A caution with its sentence, as it stands in a finding. */
export type StatedCaution = Caution & { readonly sentence: string };

/** What every answer has. */
export type AnswerParts = {
  readonly sentence: string;
  readonly estimate: readonly Estimate[];
  readonly rows: { readonly used: readonly RowRef[]; readonly setAside: readonly SetAside[] };
  readonly checks: readonly Check[];
  readonly cautions: readonly StatedCaution[];
  readonly method: MethodUse;
  readonly seed?: number;
  readonly picture?: Picture;
  readonly trace: Trace;
};

/** An answer: `kind` says which sort; a verdict carries its word besides. */
export type Answer =
  | (AnswerParts & { readonly kind: Exclude<AnswerKind, "verdict"> })
  | (AnswerParts & { readonly kind: "verdict"; readonly verdict: Verdict });

/** A finding that declines: the reason and what would be needed. */
export type Refused = {
  readonly kind: "refused";
  readonly code: string;
  readonly facts: Readonly<Record<string, string | number>>;
  readonly sentence: string;
  readonly needed?: string;
};

export type Finding = Answer | Refused;

// What the maker wrote, as typed data with places. Offsets in a Span count UTF-16 units within the entry's body.
import type { Expression, Span } from "../../core/formula/index.ts";

/** A name as written, with its place. */
export type NameAt = Span & { readonly name: string };
/** An amount as written: `5 N m`. */
export type AmountAt = Span & { readonly value: number; readonly unit: string | null; readonly unitSpan?: Span };

/** What may end every question: `where`, `by METHOD`, `of TABLE`. */
type QuestionTail = { readonly where: Expression | null; readonly by: NameAt | null; readonly of: NameAt | null };

export type QuestionSyntax = QuestionTail &
  /** `Y against X and X2, allowing for G, as a power law` / `… within G`. */
  (
    | {
        readonly asks: "relation";
        readonly y: Expression;
        readonly x: readonly Expression[];
        readonly allowingFor: readonly Expression[];
        readonly within: Expression | null;
        readonly powerLaw: boolean;
      }
    | { readonly asks: "comparison"; readonly y: Expression; readonly across: Expression }
    | { readonly asks: "agreement"; readonly a: Expression; readonly b: Expression }
    | { readonly asks: "words"; readonly notes: Expression; readonly across: Expression }
    | { readonly asks: "word"; readonly notes: Expression; readonly word: string; readonly x: Expression }
    | {
        readonly asks: "prediction";
        readonly y: Expression;
        readonly when: readonly { readonly x: Expression; readonly is: Expression }[];
        readonly group: string | null;
      }
    | { readonly asks: "ranking"; readonly table: NameAt; readonly expression: Expression }
  );

export type RuleSyntax = {
  readonly stated: string | null;
  readonly because: string | null;
  readonly within: Expression | null;
  readonly where: Expression | null;
} & (
  | {
      readonly claims: "moves-with";
      readonly x: Expression;
      readonly xMoves: "rises" | "falls";
      readonly y: Expression;
      readonly yMoves: "rises" | "falls";
      readonly byAtLeast: Expression | null;
    }
  | {
      readonly claims: "holds";
      readonly when: Expression;
      readonly expect: Expression;
      readonly atLeast: { readonly of: number; readonly hold: number } | null;
    }
  | { readonly claims: "stays-within"; readonly y: Expression; readonly within_: Expression; readonly of: Expression }
  | { readonly claims: "give-or-take"; readonly y: Expression; readonly is: Expression; readonly tolerance: Expression }
  | {
      readonly claims: "has-more";
      readonly more: string;
      readonly less: string;
      readonly moreOrLess: "more" | "less";
      readonly y: Expression;
      readonly byAtLeast: Expression | null;
    }
  | { readonly claims: "same-within"; readonly a: Expression; readonly b: Expression; readonly tolerance: Expression }
);

export type RecordsLine = Span &
  (
    | { readonly says: "from"; readonly file: string; readonly sheet: string | null; readonly table: number | null }
    | { readonly says: "join"; readonly file: string; readonly on: NameAt }
    | { readonly says: "piece-is"; readonly column: NameAt }
    | { readonly says: "pieces-share"; readonly column: NameAt }
    | { readonly says: "finished-on"; readonly column: NameAt }
    | { readonly says: "correct"; readonly column: NameAt; readonly by: NameAt }
    | { readonly says: "leave-out"; readonly piece: string; readonly because: string }
  );

/** The typed syntax of an entry's body, by kind. */
export type EntrySyntax =
  | { readonly kind: "records"; readonly lines: readonly RecordsLine[] }
  | {
      readonly kind: "columns";
      readonly columns: readonly (Span & { readonly name: NameAt; readonly expression: Expression })[];
    }
  | { readonly kind: "value"; readonly expression: Expression }
  | {
      readonly kind: "dial";
      readonly start: AmountAt;
      readonly low: AmountAt;
      readonly high: AmountAt;
      readonly step: AmountAt | null;
    }
  | { readonly kind: "question"; readonly question: QuestionSyntax }
  | { readonly kind: "rule"; readonly rule: RuleSyntax }
  | {
      readonly kind: "rig";
      readonly reading: NameAt;
      readonly reference: NameAt;
      readonly file: string;
      readonly where: Expression | null;
    }
  | {
      readonly kind: "picture";
      readonly y: Expression;
      readonly x: Expression;
      readonly by: Expression | null;
      readonly of: NameAt | null;
      readonly where: Expression | null;
    }
  | {
      readonly kind: "lexicon";
      readonly families: readonly { readonly family: string; readonly words: readonly string[] }[];
    }
  | { readonly kind: "use"; readonly names: readonly NameAt[]; readonly file: string }
  | { readonly kind: "setting"; readonly dials: readonly { readonly dial: NameAt; readonly amount: AmountAt }[] };

export type EntryKindId = EntrySyntax["kind"];

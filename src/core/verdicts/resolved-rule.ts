// A rule of thumb with its names resolved to columns: what the language's rule is, once the engine has looked everything up.
import type { GradeColumn, LabelColumn, QuantityColumn } from "../columns/index.ts";

/** An amount of the rule, in SI, and the unit in which it was written. */
export type RuleAmount = { readonly value: number; readonly unit: string };
/** A condition evaluated for each row of the table: 1 true, 0 false, -1 not known (something in it is missing). */
export type Condition = { readonly words: string; readonly holds: Int8Array };

export type RuleClaim =
  | {
      readonly claims: "moves-with";
      readonly x: QuantityColumn;
      readonly xMoves: "rises" | "falls";
      readonly y: QuantityColumn;
      readonly yMoves: "rises" | "falls";
      /** In the unit of Y (over the middle half of X) or of Y per X. */
      readonly byAtLeast: (RuleAmount & { readonly per: "slope" | "middle-half" }) | null;
    }
  | {
      readonly claims: "holds";
      readonly when: Condition;
      readonly expect: Condition;
      readonly atLeast: { readonly hold: number; readonly of: number } | null;
    }
  | {
      readonly claims: "stays-within";
      readonly y: QuantityColumn;
      readonly of: QuantityColumn;
      readonly tolerance: RuleAmount;
    }
  | {
      readonly claims: "give-or-take";
      readonly y: QuantityColumn;
      readonly of: QuantityColumn;
      readonly tolerance: RuleAmount;
    }
  | {
      readonly claims: "has-more";
      readonly groups: LabelColumn | GradeColumn;
      readonly more: string;
      readonly less: string;
      readonly y: QuantityColumn;
      readonly byAtLeast: RuleAmount | null;
    }
  | {
      readonly claims: "same-within";
      readonly a: QuantityColumn;
      readonly b: QuantityColumn;
      readonly tolerance: RuleAmount;
    };

/** `has-more` with "less" arrives with its two groups swapped, so that `more` always claims the larger mean. */
export type ResolvedRule = RuleClaim & {
  /** The rule as the maker wrote it. */
  readonly words: string;
  /** The day it was stated, days since 1970-01-01, or null; and as written. */
  readonly stated: { readonly day: number; readonly text: string } | null;
  readonly within: LabelColumn | null;
  readonly mask: Uint8Array | null;
};

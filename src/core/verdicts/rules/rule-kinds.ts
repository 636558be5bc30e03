import type { JudgementOutcome } from "../judgement.ts";
import type { ResolvedRule } from "../resolved-rule.ts";
import { judgeHasMore } from "./judge-has-more.ts";
import { judgeHolds } from "./judge-holds.ts";
import { judgeMovesWith } from "./judge-moves-with.ts";
import { judgeSameWithin } from "./judge-same-within.ts";
import { judgeWithin } from "./judge-within.ts";
import type { RuleInput } from "./rule-input.ts";

type Judge<C extends ResolvedRule["claims"]> = (
  rule: Extract<ResolvedRule, { claims: C }>,
  input: RuleInput,
) => JudgementOutcome;

/** How each kind of rule is judged on a set of rows. A new kind does not compile until it stands here. */
export const ruleKinds: { readonly [C in ResolvedRule["claims"]]: Judge<C> } = {
  "moves-with": judgeMovesWith,
  holds: judgeHolds,
  "stays-within": judgeWithin,
  "give-or-take": judgeWithin,
  "has-more": judgeHasMore,
  "same-within": judgeSameWithin,
};

import type { Expression } from "../../../../core/formula/index.ts";
import type { RuleSyntax } from "../../../language/index.ts";

const own: {
  readonly [C in RuleSyntax["claims"]]: (
    rule: Extract<RuleSyntax, { readonly claims: C }>,
  ) => readonly (Expression | null)[];
} = {
  "moves-with": ({ x, y, byAtLeast }) => [x, y, byAtLeast],
  holds: ({ when, expect }) => [when, expect],
  "stays-within": ({ y, within_, of }) => [y, within_, of],
  "give-or-take": ({ y, is, tolerance }) => [y, is, tolerance],
  "has-more": ({ y, byAtLeast }) => [y, byAtLeast],
  "same-within": ({ a, b, tolerance }) => [a, b, tolerance],
};

/** Every formula of a rule, in reading order. */
export function ruleExpressions(rule: RuleSyntax): readonly (Expression | null)[] {
  const pick = own[rule.claims] as (rule: RuleSyntax) => readonly (Expression | null)[];
  return [...pick(rule), rule.within, rule.where];
}

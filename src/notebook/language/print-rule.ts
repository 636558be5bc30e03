// A rule as text: the claim on the first line, what limits it beneath.
import type { RuleSyntax } from "./entry-syntax.ts";
import { printLabel } from "./print-label.ts";
import { printPart } from "./print-part.ts";
import { quotedText } from "./quoted-text.ts";

function claimed(rule: RuleSyntax): string {
  switch (rule.claims) {
    case "moves-with":
      return `when ${printPart(rule.x)} ${rule.xMoves}, ${printPart(rule.y)} ${rule.yMoves}`;
    case "holds":
      return `when ${printPart(rule.when)}, expect ${printPart(rule.expect)}`;
    case "stays-within":
      return `${printPart(rule.y)} stays within ${printPart(rule.within_)} of ${printPart(rule.of)}`;
    case "give-or-take":
      return `${printPart(rule.y)} is ${printPart(rule.is)} give or take ${printPart(rule.tolerance)}`;
    case "has-more":
      return `${printLabel(rule.more)} has ${rule.moreOrLess} ${printPart(rule.y)} than ${printLabel(rule.less)}`;
    case "same-within":
      return `${printPart(rule.a)} and ${printPart(rule.b)} are the same within ${printPart(rule.tolerance)}`;
  }
}

/** The rule, one clause a line. */
export function printRule(rule: RuleSyntax): string {
  const byAtLeast = rule.claims === "moves-with" || rule.claims === "has-more" ? rule.byAtLeast : null;
  const atLeast = rule.claims === "holds" ? rule.atLeast : null;
  return [
    claimed(rule),
    ...(rule.within ? [`within ${printPart(rule.within)}`] : []),
    ...(byAtLeast ? [`by at least ${printPart(byAtLeast)}`] : []),
    ...(atLeast ? [`in at least ${atLeast.hold} of ${atLeast.of}`] : []),
    ...(rule.where ? [`where ${printPart(rule.where)}`] : []),
    ...(rule.stated === null ? [] : [`stated ${rule.stated}`]),
    ...(rule.because === null ? [] : [`because ${quotedText(rule.because)}`]),
  ].join("\n");
}

// A rule's tree as typed syntax.
import type { SyntaxNode } from "@lezer/common";
import type { Expression } from "../../core/formula/index.ts";
import type { RuleSyntax } from "./entry-syntax.ts";
import { syntaxFromFormula } from "./syntax-from-formula.ts";
import { numberOf, type SyntaxReading, spanOf, textOf, unquoted } from "./syntax-reading.ts";

const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function statedDate(reading: SyntaxReading, node: SyntaxNode): string {
  const text = textOf(reading, node);
  const [, month = 1, day = 1] = text.split("-").map(Number);
  if (month < 1 || day < 1 || day > (DAYS[month - 1] ?? 0))
    reading.problems.push({
      code: "syntax",
      span: spanOf(reading, node),
      facts: { found: text, expected: "a date as year-month-day" },
    });
  return text;
}

/** The rule, or null where a part is missing. top: the tree of the whole entry. */
export function syntaxFromRule(reading: SyntaxReading, top: SyntaxNode): RuleSyntax | null {
  const claim = top.firstChild;
  if (!claim) return null;
  const formulas = (of: SyntaxNode | null): readonly Expression[] =>
    of?.getChildren("Formula").map((each) => syntaxFromFormula(reading, each)) ?? [];
  const inClause = (clause: string): Expression | null => formulas(top.getChild(clause))[0] ?? null;
  const date = top.getChild("StatedClause")?.getChild("StatedDate");
  const because = top.getChild("BecauseClause")?.getChild("Text");
  const common = {
    stated: date ? statedDate(reading, date) : null,
    because: because ? unquoted(textOf(reading, because)) : null,
    within: inClause("WithinClause"),
    where: inClause("WhereClause"),
  };
  const byAtLeast = inClause("AtLeastClause");
  const [a, b, c] = formulas(claim);
  if (!a) return null;
  switch (claim.name) {
    case "MovesWith": {
      const [xMoves, yMoves] = [...claim.getChildren("Rises"), ...claim.getChildren("Falls")]
        .sort((one, other) => one.from - other.from)
        .map(({ name }) => (name === "Rises" ? ("rises" as const) : ("falls" as const)));
      return b && xMoves && yMoves ? { ...common, claims: "moves-with", x: a, xMoves, y: b, yMoves, byAtLeast } : null;
    }
    case "Holds": {
      const [hold, of] = (top.getChild("CountClause")?.getChildren("Number") ?? []).map((each) =>
        numberOf(reading, each),
      );
      return b
        ? {
            ...common,
            claims: "holds",
            when: a,
            expect: b,
            atLeast: hold !== undefined && of !== undefined ? { hold, of } : null,
          }
        : null;
    }
    case "StaysWithinClaim":
      return b && c ? { ...common, claims: "stays-within", y: a, within_: b, of: c } : null;
    case "GiveOrTakeClaim":
      return b && c ? { ...common, claims: "give-or-take", y: a, is: b, tolerance: c } : null;
    case "HasMoreClaim": {
      const [more, less] = claim.getChildren("Label").map((label) => unquoted(textOf(reading, label)));
      return more !== undefined && less !== undefined
        ? {
            ...common,
            claims: "has-more",
            more,
            less,
            moreOrLess: claim.getChild("HasMore") ? "more" : "less",
            y: a,
            byAtLeast,
          }
        : null;
    }
    case "SameWithinClaim":
      return b && c ? { ...common, claims: "same-within", a, b, tolerance: c } : null;
    default:
      return null;
  }
}

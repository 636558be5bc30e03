// A question's tree as typed syntax.
import type { SyntaxNode } from "@lezer/common";
import type { Expression } from "../../core/formula/index.ts";
import type { NameAt, QuestionSyntax } from "./entry-syntax.ts";
import { syntaxFromFormula } from "./syntax-from-formula.ts";
import { nameOf, type SyntaxReading, textOf, unquoted } from "./syntax-reading.ts";

/** The question, or null where a part is missing. top: the tree of the whole sentence. */
export function syntaxFromQuestion(reading: SyntaxReading, top: SyntaxNode): QuestionSyntax | null {
  const node = top.firstChild;
  if (!node) return null;
  const formula = (of: SyntaxNode): Expression => syntaxFromFormula(reading, of);
  const formulas = (of: SyntaxNode | null): readonly Expression[] => of?.getChildren("Formula").map(formula) ?? [];
  const inClause = (clause: string): Expression | null => formulas(node.getChild(clause))[0] ?? null;
  const nameIn = (clause: string, kind: string): NameAt | null => {
    const found = node.getChild(clause)?.getChild(kind);
    return found ? nameOf(reading, found) : null;
  };
  const tail = {
    where: inClause("WhereClause"),
    by: nameIn("ByClause", "MethodName"),
    of: nameIn("OfClause", "EntryName"),
  };
  const [first, ...others] = formulas(node);
  const [second] = others;
  if (!first) return null;
  switch (node.name) {
    case "Relation":
      return second
        ? {
            ...tail,
            asks: "relation",
            y: first,
            x: others,
            allowingFor: node.getChildren("AllowingClause").flatMap(formulas),
            within: inClause("WithinClause"),
            powerLaw: node.getChild("AsPowerLaw") !== null,
          }
        : null;
    case "Comparison":
      return second ? { ...tail, asks: "comparison", y: first, across: second } : null;
    case "Agreement":
      return second ? { ...tail, asks: "agreement", a: first, b: second } : null;
    case "WordsAcross":
      return second ? { ...tail, asks: "words", notes: first, across: second } : null;
    case "WordAgainst": {
      const word = node.getChild("Text");
      return word && second
        ? { ...tail, asks: "word", notes: first, word: unquoted(textOf(reading, word)), x: second }
        : null;
    }
    case "Prediction": {
      const when = node.getChildren("Given").flatMap((given) => {
        const [x, is] = formulas(given);
        return x && is ? [{ x, is }] : [];
      });
      const group = node.getChild("ForClause")?.getChild("Label");
      return { ...tail, asks: "prediction", y: first, when, group: group ? unquoted(textOf(reading, group)) : null };
    }
    case "Ranking": {
      const table = node.getChild("EntryName");
      return table && { ...tail, asks: "ranking", table: nameOf(reading, table), expression: first };
    }
    default:
      return null;
  }
}

// A body as typed syntax with its problems. A kind written a line at a time keeps the lines that were understood.
import type { SyntaxNode } from "@lezer/common";
import { limits } from "../../core/base/index.ts";
import { entryForms } from "./entry-forms.ts";
import type { EntryKindId, EntrySyntax } from "./entry-syntax.ts";
import { firstSyntaxProblem } from "./first-syntax-problem.ts";
import { logicalLines } from "./logical-lines.ts";
import { nestingOf } from "./nesting-of.ts";
import { sentenceParser } from "./sentence-parser.ts";
import { strictTree } from "./strict-tree.ts";
import { syntaxFromFormula } from "./syntax-from-formula.ts";
import { syntaxFromQuestion } from "./syntax-from-question.ts";
import { syntaxFromRecords } from "./syntax-from-records.ts";
import { syntaxFromRule } from "./syntax-from-rule.ts";
import {
  amountOf,
  nameOf,
  type SyntaxProblem,
  type SyntaxReading,
  spanOf,
  textOf,
  unquoted,
} from "./syntax-reading.ts";

export type BodySyntax = { readonly syntax: EntrySyntax | null; readonly problems: readonly SyntaxProblem[] };

/** How many problems of one entry are told with all that could stand there; the rest only with their places. */
const CLOSELY = 20;

type Line<T> = (reading: SyntaxReading, top: SyntaxNode) => T | null;

function each<T>(kind: EntryKindId, body: string, problems: SyntaxProblem[], read: Line<T>): readonly T[] {
  return logicalLines(body).flatMap(({ from, text }) => {
    const line = one(kind, text, from, problems, read);
    return line === null ? [] : [line];
  });
}

function one<T>(kind: EntryKindId, text: string, base: number, problems: SyntaxProblem[], read: Line<T>): T | null {
  const { depth, at } = nestingOf(text);
  const { value: deepest, words } = limits.formulaDepth;
  if (depth > deepest) {
    problems.push({
      code: "limit",
      span: { from: base + at, to: base + at + 1 },
      facts: { what: words, limit: `${deepest}`, found: `${depth}` },
    });
    return null;
  }
  const { tree, stoppedAt } = strictTree(sentenceParser(kind), text);
  if (tree === null) {
    problems.push(firstSyntaxProblem(kind, text, base, stoppedAt, problems.length < CLOSELY));
    return null;
  }
  const before = problems.length;
  const made = read({ text, base, problems }, tree.topNode);
  return problems.length > before ? null : made;
}

const fileOf = (reading: SyntaxReading, top: SyntaxNode): string => {
  const file = top.getChild("File");
  return file ? unquoted(textOf(reading, file)) : "";
};

const whole: { readonly [K in EntryKindId]: (body: string, problems: SyntaxProblem[]) => EntrySyntax | null } = {
  records: (body, problems) => ({ kind: "records", lines: each("records", body, problems, syntaxFromRecords) }),
  columns: (body, problems) => ({
    kind: "columns",
    columns: each("columns", body, problems, (reading, top) => {
      const name = top.getChild("Name");
      const formula = top.getChild("Formula");
      return (
        name &&
        formula && {
          ...spanOf(reading, top),
          name: nameOf(reading, name),
          expression: syntaxFromFormula(reading, formula),
        }
      );
    }),
  }),
  value: (body, problems) => {
    const expression = one("value", body, 0, problems, (reading, top) => {
      const formula = top.getChild("Formula");
      return formula && syntaxFromFormula(reading, formula);
    });
    return expression && { kind: "value", expression };
  },
  dial: (body, problems) =>
    one("dial", body, 0, problems, (reading, top) => {
      const [start, low, high, step] = top.getChildren("Quantity").map((quantity) => amountOf(reading, quantity));
      return start && low && high ? { kind: "dial" as const, start, low, high, step: step ?? null } : null;
    }),
  question: (body, problems) => {
    const question = one("question", body, 0, problems, syntaxFromQuestion);
    return question && { kind: "question", question };
  },
  rule: (body, problems) => {
    const rule = one("rule", body, 0, problems, syntaxFromRule);
    return rule && { kind: "rule", rule };
  },
  rig: (body, problems) =>
    one("rig", body, 0, problems, (reading, top) => {
      const [measured, reference] = top.getChildren("Name").map((name) => nameOf(reading, name));
      const where = top.getChild("WhereClause")?.getChild("Formula");
      return measured && reference
        ? {
            kind: "rig" as const,
            reading: measured,
            reference,
            file: fileOf(reading, top),
            where: where ? syntaxFromFormula(reading, where) : null,
          }
        : null;
    }),
  picture: (body, problems) =>
    one("picture", body, 0, problems, (reading, top) => {
      const [y, x] = top.getChildren("Formula").map((formula) => syntaxFromFormula(reading, formula));
      const by = top.getChild("PictureByClause")?.getChild("Formula");
      const where = top.getChild("WhereClause")?.getChild("Formula");
      const of = top.getChild("OfClause")?.getChild("EntryName");
      return y && x
        ? {
            kind: "picture" as const,
            y,
            x,
            by: by ? syntaxFromFormula(reading, by) : null,
            of: of ? nameOf(reading, of) : null,
            where: where ? syntaxFromFormula(reading, where) : null,
          }
        : null;
    }),
  lexicon: (body, problems) => ({
    kind: "lexicon",
    families: each("lexicon", body, problems, (reading, top) => {
      const [family, ...words] = top.getChildren("LexiconWord").map((word) => textOf(reading, word).trim());
      return family === undefined ? null : { family, words };
    }),
  }),
  use: (body, problems) =>
    one("use", body, 0, problems, (reading, top) => ({
      kind: "use" as const,
      names: top.getChildren("EntryName").map((name) => nameOf(reading, name)),
      file: fileOf(reading, top),
    })),
  setting: (body, problems) => ({
    kind: "setting",
    dials: each("setting", body, problems, (reading, top) => {
      const dial = top.getChild("Name");
      const amount = top.getChild("Quantity");
      return dial && amount && { dial: nameOf(reading, dial), amount: amountOf(reading, amount) };
    }),
  }),
};

/** What a body of this kind says. Places are offsets in the body. Never throws. */
export function syntaxFromBody(kind: EntryKindId, body: string): BodySyntax {
  const { value: most, words } = limits.entryCharacters;
  if (body.length > most)
    return {
      syntax: null,
      problems: [
        { code: "limit", span: { from: 0, to: 1 }, facts: { what: words, limit: `${most}`, found: `${body.length}` } },
      ],
    };
  const problems: SyntaxProblem[] = [];
  const syntax = whole[kind](body, problems);
  if (entryForms[kind].byLine && problems.length === 0 && logicalLines(body).length === 0)
    problems.push({
      code: "syntax",
      span: { from: 0, to: 0 },
      facts: { found: "Nothing", expected: "at least one line" },
    });
  return { syntax, problems };
}

import fc from "fast-check";
import { expect } from "vitest";
import type { Expression } from "../../../src/core/formula/index.ts";
import {
  type EntrySyntax,
  printEntry,
  type QuestionSyntax,
  type RuleSyntax,
  syntaxFromBody,
} from "../../../src/notebook/language/index.ts";
import { law } from "../../support/law.ts";

const at = { from: 0, to: 0 };
const name = fc
  .constantFrom(
    "density",
    "stiffness_along",
    "within",
    "of",
    "word",
    "expect",
    "Weird name",
    "rises",
    "is",
    "a",
    "länge",
    "x2",
  )
  .map((each) => each);
const unit = fc.constantFrom(null, "mm", "kg/m3", "N m", "in", "%", "GPa");
const number: fc.Arbitrary<Expression> = fc
  .record({ value: fc.oneof(fc.nat(1000), fc.double({ min: 1e-9, max: 1e12, noNaN: true })), unit })
  .map(({ value, unit: of }) => ({ ...at, kind: "number", value, unit: of }));
const { expression } = fc.letrec<{ expression: Expression }>((tie) => ({
  expression: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    name.map((each): Expression => ({ ...at, kind: "name", name: each })),
    number,
    fc.constantFrom<Expression>(
      { ...at, kind: "text", value: "balance" },
      { ...at, kind: "text", value: 'a "b" \\ c' },
      { ...at, kind: "date", value: "2024-05-02" },
      { ...at, kind: "missing" },
    ),
    fc
      .record({
        operator: fc.constantFrom("+", "-", "*", "/", "^", "=", "!=", "<", "<=", ">", ">=", "and", "or" as const),
        left: tie("expression"),
        right: tie("expression"),
      })
      .map((parts) => ({ ...at, kind: "binary", operatorSpan: at, ...parts }) as Expression),
    fc
      .record({ operator: fc.constantFrom("-", "not" as const), operand: tie("expression") })
      .map((parts) => ({ ...at, kind: "unary", ...parts }) as Expression),
    fc
      .record({ arguments: fc.array(tie("expression"), { maxLength: 3 }) })
      .map((parts) => ({ ...at, kind: "call", name: "sqrt", nameSpan: at, ...parts }) as Expression),
    fc
      .record({ of: tie("expression"), by: fc.option(tie("expression")) })
      .map((parts) => ({ ...at, kind: "group", name: "mean", nameSpan: at, ...parts }) as Expression),
    fc
      // biome-ignore lint/suspicious/noThenProperty: the branch of a formula's condition, never awaited
      .record({ condition: tie("expression"), then: tie("expression"), otherwise: tie("expression") })
      .map((parts) => ({ ...at, kind: "if", ...parts }) as Expression),
    tie("expression").map((operand) => ({ ...at, kind: "in", operand, unit: "mm", unitSpan: at }) as Expression),
  ),
}));
const named = fc.constantFrom("tops", "earlier-tops", "kitchen-scale").map((each) => ({ ...at, name: each }));
const label = fc.constantFrom("spruce", "western red cedar", "spruce of 1990", 'the "good" one', "is", "than");
const or = <T>(some: fc.Arbitrary<T>) => fc.option(some, { nil: null });
const tail = { where: or(expression), by: or(named), of: or(named) };
const question = fc.oneof(
  fc.record({
    ...tail,
    asks: fc.constant("relation"),
    y: expression,
    x: fc.array(expression, { minLength: 1, maxLength: 2 }),
    allowingFor: fc.array(expression, { maxLength: 2 }),
    within: or(expression),
    powerLaw: fc.boolean(),
  }),
  fc.record({ ...tail, asks: fc.constant("comparison"), y: expression, across: expression }),
  fc.record({ ...tail, asks: fc.constant("agreement"), a: expression, b: expression }),
  fc.record({ ...tail, asks: fc.constant("words"), notes: expression, across: expression }),
  fc.record({ ...tail, asks: fc.constant("word"), notes: expression, word: label, x: expression }),
  fc.record({
    ...tail,
    asks: fc.constant("prediction"),
    y: expression,
    when: fc.array(fc.record({ x: expression, is: expression }), { minLength: 1, maxLength: 2 }),
    group: or(label),
  }),
  fc.record({ ...tail, asks: fc.constant("ranking"), table: named, expression }),
) as fc.Arbitrary<QuestionSyntax>;
const ending = {
  stated: or(fc.constantFrom("2024-05-02", "2023")),
  because: or(label),
  within: or(expression),
  where: or(expression),
};
const moves = fc.constantFrom("rises", "falls");
const rule = fc.oneof(
  fc.record({
    ...ending,
    claims: fc.constant("moves-with"),
    x: expression,
    xMoves: moves,
    y: expression,
    yMoves: moves,
    byAtLeast: or(expression),
  }),
  fc.record({
    ...ending,
    claims: fc.constant("holds"),
    when: expression,
    expect: expression,
    atLeast: or(fc.record({ of: fc.nat(20), hold: fc.nat(20) })),
  }),
  fc.record({ ...ending, claims: fc.constant("stays-within"), y: expression, within_: expression, of: expression }),
  fc.record({ ...ending, claims: fc.constant("give-or-take"), y: expression, is: expression, tolerance: expression }),
  fc.record({
    ...ending,
    claims: fc.constant("has-more"),
    more: label,
    less: label,
    moreOrLess: fc.constantFrom("more", "less"),
    y: expression,
    byAtLeast: or(expression),
  }),
  fc.record({ ...ending, claims: fc.constant("same-within"), a: expression, b: expression, tolerance: expression }),
) as fc.Arbitrary<RuleSyntax>;

const PLACES = new Set(["from", "to", "unitSpan", "nameSpan", "operatorSpan"]);
const withoutPlaces = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (key, each: unknown) => (PLACES.has(key) ? undefined : each)));

function comesBack(syntax: EntrySyntax): void {
  const text = printEntry(syntax);
  const read = syntaxFromBody(syntax.kind, text);
  expect({ text, problems: read.problems, syntax: withoutPlaces(read.syntax) }).toEqual({
    text,
    problems: [],
    syntax: withoutPlaces(syntax),
  });
}

law(
  "a formula that is written out is read back as the same formula",
  [expression],
  (each) => comesBack({ kind: "value", expression: each }),
  1500,
);
law(
  "a question that is written out is read back as the same question",
  [question],
  (each) => comesBack({ kind: "question", question: each }),
  1500,
);
law(
  "a rule that is written out is read back as the same rule",
  [rule],
  (each) => comesBack({ kind: "rule", rule: each }),
  1500,
);

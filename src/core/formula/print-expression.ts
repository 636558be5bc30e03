// A formula as text: what the language reads back as the same formula.
import type { Expression } from "./expression.ts";

/** How tightly each form holds its parts; higher is tighter. */
const TIGHTNESS = {
  in: 0,
  if: 0,
  or: 1,
  and: 2,
  not: 3,
  comparison: 4,
  sum: 5,
  product: 6,
  minus: 7,
  power: 8,
  primary: 9,
} as const;

/** Words of the language: as names they stand in backquotes. */
const RESERVED = new Set([
  "and",
  "or",
  "not",
  "if",
  "then",
  "else",
  "in",
  "of",
  "by",
  "is",
  "missing",
  "mean",
  "median",
  "min",
  "max",
  "sum",
  "count",
  "sd",
  "where",
  "against",
  "across",
  "within",
  "when",
  "expect",
  "rank",
  "words",
  "word",
  "allowing",
  "for",
  "as",
  "beside",
  "stated",
  "because",
  "has",
  "stays",
  "give",
  "from",
  "to",
  "step",
  "yes",
  "no",
  "true",
  "false",
]);

function tightness(node: Expression): number {
  switch (node.kind) {
    case "binary":
      if (node.operator === "or" || node.operator === "and") return TIGHTNESS[node.operator];
      if (node.operator === "+" || node.operator === "-") return TIGHTNESS.sum;
      if (node.operator === "*" || node.operator === "/") return TIGHTNESS.product;
      return node.operator === "^" ? TIGHTNESS.power : TIGHTNESS.comparison;
    case "unary":
      return node.operator === "not" ? TIGHTNESS.not : TIGHTNESS.minus;
    case "in":
    case "if":
    case "group":
      return TIGHTNESS.if;
    case "number":
      return node.value < 0 ? TIGHTNESS.minus : TIGHTNESS.primary;
    default:
      return TIGHTNESS.primary;
  }
}

const bracketed = (text: string, needed: boolean): string => (needed ? `(${text})` : text);
const inside = (node: Expression, least: number): string => bracketed(printExpression(node), tightness(node) < least);

/** A name as a formula writes it: in backquotes unless it is a plain word. */
export const printName = (name: string): string =>
  /^[\p{L}_][\p{L}\p{M}\p{N}_]*$/u.test(name) && !RESERVED.has(name) ? name : `\`${name}\``;

type Binary = Extract<Expression, { kind: "binary" }>;

/** Operators from left to right in a loop: a + b + c + … may be thousands long. */
function printBinary(root: Binary): string {
  const spine: Binary[] = [root];
  for (let left = root.left; left.kind === "binary"; left = left.left) spine.push(left);
  const start = (spine.at(-1) ?? root).left;
  let text = "";
  let before: Expression = start;
  for (const node of spine.reverse()) {
    const own = tightness(node);
    const alone = own === TIGHTNESS.comparison || own === TIGHTNESS.power;
    const left = before === start ? printExpression(start) : text;
    text = `${bracketed(left, tightness(before) < (alone ? own + 1 : own))} ${node.operator} ${inside(node.right, own + 1)}`;
    before = node;
  }
  return text;
}

/** The formula as text, with brackets only where they are needed. */
export function printExpression(node: Expression): string {
  switch (node.kind) {
    case "number":
      return `${node.value}${node.uncertainty === undefined ? "" : ` ± ${node.uncertainty}`}${node.unit === null ? "" : ` ${node.unit}`}`;
    case "text":
      return `"${node.value.replace(/["\\]/g, "\\$&")}"`;
    case "date":
      return node.value;
    case "name":
      return printName(node.name);
    case "call":
      return `${node.name}(${node.arguments.map(printExpression).join(", ")})`;
    case "group":
      return `${node.name} of ${inside(node.of, TIGHTNESS.primary)}${node.by ? ` by ${inside(node.by, TIGHTNESS.primary)}` : ""}`;
    case "unary":
      return node.operator === "not"
        ? `not ${inside(node.operand, TIGHTNESS.not)}`
        : `-${inside(node.operand, TIGHTNESS.power)}`;
    case "binary":
      return printBinary(node);
    case "if":
      return `if ${inside(node.condition, TIGHTNESS.or)} then ${inside(node.then, TIGHTNESS.or)} else ${inside(node.otherwise, TIGHTNESS.or)}`;
    case "in":
      return `${inside(node.operand, TIGHTNESS.or)} in ${node.unit}`;
    case "missing":
      return "missing";
  }
}

// The tree of a formula made into an expression: which operator binds more tightly is settled here.
import type { SyntaxNode } from "@lezer/common";
import { limits } from "../../core/base/index.ts";
import type { BinaryOperator, Expression } from "../../core/formula/index.ts";
import { childrenOf, nameOf, numberOf, type SyntaxReading, spanOf, textOf, unquoted } from "./syntax-reading.ts";

/** Operators by node, with how tightly they bind. */
const OPERATORS: ReadonlyMap<string, readonly [BinaryOperator, number]> = new Map([
  ["Or", ["or", 1]],
  ["And", ["and", 2]],
  ["Equal", ["=", 4]],
  ["Is", ["=", 4]],
  ["NotEqual", ["!=", 4]],
  ["IsNot", ["!=", 4]],
  ["Less", ["<", 4]],
  ["LessEqual", ["<=", 4]],
  ["More", [">", 4]],
  ["MoreEqual", [">=", 4]],
  ["Plus", ["+", 5]],
  ["Minus", ["-", 5]],
  ["Times", ["*", 6]],
  ["Divide", ["/", 6]],
  ["Power", ["^", 8]],
]);
/** Signs before signs and powers of powers add to the brackets, which are counted before anything is parsed. */
const DEEPEST = limits.formulaDepth.value * 4;
const NOT_BINDS = 3;
const MINUS_BINDS = 7;

const missingAt = (reading: SyntaxReading, node: { readonly from: number; readonly to: number }): Expression => ({
  ...spanOf(reading, node),
  kind: "missing",
});

/** Walks the flat list of signs, operands and operators once. */
type Walk = { readonly reading: SyntaxReading; readonly nodes: readonly SyntaxNode[]; at: number; depth: number };

function tooDeep(walk: Walk): boolean {
  if (walk.depth <= DEEPEST) return false;
  const node = walk.nodes[walk.at];
  const { reading } = walk;
  if (!reading.problems.some(({ code }) => code === "limit"))
    reading.problems.push({
      code: "limit",
      span: spanOf(reading, node ?? { from: 0, to: 1 }),
      facts: { what: limits.formulaDepth.words, limit: `${limits.formulaDepth.value}`, found: "more" },
    });
  return true;
}

function signed(walk: Walk): Expression {
  const node = walk.nodes[walk.at];
  if (!node) return missingAt(walk.reading, { from: walk.reading.text.length, to: walk.reading.text.length });
  if (node.name !== "Minus" && node.name !== "Not") {
    walk.at++;
    return expressionFromAtom(walk.reading, node, walk.depth + 1);
  }
  if (tooDeep(walk)) {
    walk.at = walk.nodes.length;
    return missingAt(walk.reading, node);
  }
  walk.at++;
  walk.depth++;
  const operand = climbed(walk, node.name === "Not" ? NOT_BINDS : MINUS_BINDS);
  walk.depth--;
  return {
    from: walk.reading.base + node.from,
    to: operand.to,
    kind: "unary",
    operator: node.name === "Not" ? "not" : "-",
    operand,
  };
}

/** Operators that bind at least as tightly as `least`, from the left in a loop; powers from the right. */
function climbed(walk: Walk, least: number): Expression {
  let left = signed(walk);
  for (;;) {
    const node = walk.nodes[walk.at];
    const operator = node && OPERATORS.get(node.name);
    if (!node || !operator || operator[1] < least) return left;
    walk.at++;
    if (tooDeep(walk)) {
      walk.at = walk.nodes.length;
      return left;
    }
    walk.depth++;
    const right = climbed(walk, operator[0] === "^" ? MINUS_BINDS : operator[1] + 1);
    walk.depth--;
    left = {
      from: left.from,
      to: right.to,
      kind: "binary",
      operator: operator[0],
      operatorSpan: spanOf(walk.reading, node),
      left,
      right,
    };
  }
}

function numberExpression(reading: SyntaxReading, node: SyntaxNode): Expression {
  const number = node.getChild("Number");
  const uncertainty = node.getChild("Uncertainty");
  const own = node.getChild("Unit");
  const given = uncertainty?.getChild("Number");
  const other = uncertainty?.getChild("Unit") ?? null;
  if (own && other && textOf(reading, own) !== textOf(reading, other))
    reading.problems.push({
      code: "syntax",
      span: spanOf(reading, other),
      facts: { found: textOf(reading, other), expected: `the uncertainty in ${textOf(reading, own)}` },
    });
  const unit = own ?? other;
  return {
    ...spanOf(reading, node),
    kind: "number",
    value: number ? numberOf(reading, number) : 0,
    unit: unit ? textOf(reading, unit) : null,
    ...(unit ? { unitSpan: spanOf(reading, unit) } : {}),
    ...(given ? { uncertainty: numberOf(reading, given) } : {}),
  };
}

function expressionFromAtom(reading: SyntaxReading, node: SyntaxNode, depth: number): Expression {
  const span = spanOf(reading, node);
  switch (node.name) {
    case "Amount":
      return numberExpression(reading, node);
    case "Text":
      return { ...span, kind: "text", value: unquoted(textOf(reading, node)) };
    case "Date":
      return { ...span, kind: "date", value: textOf(reading, node) };
    case "Name":
      return { ...span, kind: "name", name: nameOf(reading, node).name };
    case "Paren": {
      const inner = node.getChild("Formula");
      return inner ? syntaxFromFormula(reading, inner, depth) : { ...span, kind: "missing" };
    }
    case "Call": {
      const name = node.getChild("Name") ?? node;
      return {
        ...span,
        kind: "call",
        name: nameOf(reading, name).name,
        nameSpan: spanOf(reading, name),
        arguments: node.getChildren("Formula").map((each) => syntaxFromFormula(reading, each, depth)),
      };
    }
    case "Group": {
      const name = node.getChild("GroupName") ?? node;
      const [of, by] = node
        .getChildren("Part")
        .map((part) =>
          part.firstChild ? expressionFromAtom(reading, part.firstChild, depth) : missingAt(reading, part),
        );
      return {
        ...span,
        kind: "group",
        name: textOf(reading, name),
        nameSpan: spanOf(reading, name),
        of: of ?? { ...span, kind: "missing" },
        by: by ?? null,
      };
    }
    default:
      return { ...span, kind: "missing" };
  }
}

function expressionFromChain(reading: SyntaxReading, nodes: readonly SyntaxNode[], depth: number): Expression {
  const [first] = nodes;
  if (first?.name === "Conditional") {
    const [condition, then] = first.getChildren("Formula").map((each) => syntaxFromFormula(reading, each, depth));
    const branch = first.getChild("Branch");
    const otherwise = branch ? expressionFromChain(reading, childrenOf(branch), depth + 1) : undefined;
    const none = missingAt(reading, first);
    return {
      ...spanOf(reading, first),
      kind: "if",
      condition: condition ?? none,
      // biome-ignore lint/suspicious/noThenProperty: the branch of a formula's condition, never awaited
      then: then ?? none,
      otherwise: otherwise ?? none,
    };
  }
  return climbed({ reading, nodes, at: 0, depth }, 0);
}

/** The expression of a formula's tree. depth: how many brackets it stands in. */
export function syntaxFromFormula(reading: SyntaxReading, formula: SyntaxNode, depth = 0): Expression {
  const nodes = childrenOf(formula).filter(({ name }) => name !== "ShowIn" && name !== "Unit");
  if (tooDeep({ reading, nodes: [formula], at: 0, depth })) return missingAt(reading, formula);
  const operators = nodes.filter(({ name }) => OPERATORS.has(name)).length;
  if (operators > limits.formulaOperators.value) {
    reading.problems.push({
      code: "limit",
      span: spanOf(reading, formula),
      facts: { what: limits.formulaOperators.words, limit: `${limits.formulaOperators.value}`, found: `${operators}` },
    });
    return missingAt(reading, formula);
  }
  const operand = expressionFromChain(reading, nodes, depth + 1);
  const unit = formula.getChild("ShowIn") ? formula.getChild("Unit") : null;
  return unit
    ? { ...spanOf(reading, formula), kind: "in", operand, unit: textOf(reading, unit), unitSpan: spanOf(reading, unit) }
    : operand;
}

// A formula from the leaves up, without a call for each level: a formula of 20,000 operators is as deep as it is long.
import type { Expression } from "./expression.ts";

/** The operands that are evaluated on the stack, left to right. A group's own parts are formulas of their own. */
export function operandsOf(node: Expression): readonly Expression[] {
  switch (node.kind) {
    case "call":
      return node.arguments;
    case "unary":
    case "in":
      return [node.operand];
    case "binary":
      return [node.left, node.right];
    case "if":
      return [node.condition, node.then, node.otherwise];
    default:
      return [];
  }
}

/** A node with how deep it stands. The left side of an operator is not deeper: a + b + c is one level. */
export type Walked = { readonly node: Expression; readonly depth: number };

/** The nodes of a formula, operands before what uses them, in reading order; stops with `tooMany` or `tooDeep` at the first node past a limit. */
export function expressionWalk(
  root: Expression,
  depth: number,
  limits: { readonly depth: number; readonly nodes: number },
): {
  readonly order: readonly Walked[];
  readonly past: { readonly limit: "depth" | "nodes"; readonly at: Expression } | null;
} {
  const order: Walked[] = [];
  const stack: Walked[] = [{ node: root, depth }];
  let operators = 0;
  for (let top = stack.pop(); top; top = stack.pop()) {
    order.push(top);
    const operands = operandsOf(top.node);
    if (operands.length > 0) operators += 1;
    if (operators > limits.nodes) return { order: [], past: { limit: "nodes", at: top.node } };
    for (const [i, node] of operands.entries()) {
      const inner = top.node.kind === "binary" && i === 0 ? top.depth : top.depth + 1;
      if (inner > limits.depth) return { order: [], past: { limit: "depth", at: node } };
      stack.push({ node, depth: inner });
    }
  }
  return { order: order.reverse(), past: null };
}

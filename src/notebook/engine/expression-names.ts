// Which names a formula mentions, with their places: what the graph connects.
import type { Expression } from "../../core/formula/index.ts";
import type { NameAt } from "../language/index.ts";

/** The operands of a node, left to right. */
function operands(node: Expression): readonly Expression[] {
  if (node.kind === "call") return node.arguments;
  if (node.kind === "group") return node.by ? [node.of, node.by] : [node.of];
  if (node.kind === "unary" || node.kind === "in") return [node.operand];
  if (node.kind === "binary") return [node.left, node.right];
  if (node.kind === "if") return [node.condition, node.then, node.otherwise];
  return [];
}

/** The names of one or more formulas in reading order, each once at its first place; a stack of our own, so depth is no danger. */
export function expressionNames(...expressions: readonly (Expression | null)[]): readonly NameAt[] {
  const found = new Map<string, NameAt>();
  const stack = [...expressions].reverse();
  while (stack.length > 0) {
    const node = stack.pop();
    if (!node) continue;
    if (node.kind === "name") {
      if (!found.has(node.name)) found.set(node.name, { name: node.name, from: node.from, to: node.to });
    } else stack.push(...[...operands(node)].reverse());
  }
  return [...found.values()];
}

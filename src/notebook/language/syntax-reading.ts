// A tree being made into typed syntax: the text it came from, where that starts in the body, and what was wrong on the way.
import type { SyntaxNode } from "@lezer/common";
import type { ProblemCode } from "../../core/base/index.ts";
import type { Span } from "../../core/formula/index.ts";
import type { AmountAt, NameAt } from "./entry-syntax.ts";

/** Something wrong in a body, at its place there. */
export type SyntaxProblem = {
  readonly code: Extract<ProblemCode, "syntax" | "limit">;
  readonly span: Span;
  readonly facts:
    | { readonly found: string; readonly expected: string }
    | { readonly what: string; readonly limit: string; readonly found: string };
  readonly suggestion?: string;
};

export type SyntaxReading = { readonly text: string; readonly base: number; readonly problems: SyntaxProblem[] };

export const spanOf = (reading: SyntaxReading, { from, to }: { readonly from: number; readonly to: number }): Span => ({
  from: reading.base + from,
  to: reading.base + to,
});
export const textOf = (reading: SyntaxReading, node: SyntaxNode): string => reading.text.slice(node.from, node.to);

/** All children, in order. */
export function childrenOf(node: SyntaxNode): readonly SyntaxNode[] {
  const found: SyntaxNode[] = [];
  for (let child = node.firstChild; child; child = child.nextSibling) found.push(child);
  return found;
}

/** The text between quotes or backquotes, or as written without. */
export function unquoted(text: string): string {
  if (/^["“]/.test(text)) return text.slice(1, -1).replace(/\\(.)/g, "$1");
  return text.startsWith("`") ? text.slice(1, -1) : text;
}

/** The name a node writes, with its place. */
export const nameOf = (reading: SyntaxReading, node: SyntaxNode): NameAt => ({
  ...spanOf(reading, node),
  name: unquoted(textOf(reading, node)),
});

/** The number a node writes: `2.4`, `3/32`, `1 3/32`. */
export function numberOf(reading: SyntaxReading, node: SyntaxNode): number {
  const text = textOf(reading, node);
  const fraction = /^(?:(\d+)\s+)?(\d+)[/⁄](\d+)$/.exec(text);
  const value = fraction ? Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]) : Number(text);
  if (Number.isFinite(value)) return value;
  reading.problems.push({
    code: "syntax",
    span: spanOf(reading, node),
    facts: { found: text, expected: "a number that can be written out" },
  });
  return 0;
}

/** An amount on its own, as a dial has it: sign, number, unit. */
export function amountOf(reading: SyntaxReading, node: SyntaxNode): AmountAt {
  const number = node.getChild("Number");
  const unit = node.getChild("Unit");
  const size = number ? numberOf(reading, number) : 0;
  const value = node.getChild("Minus") && size !== 0 ? -size : size;
  return {
    ...spanOf(reading, node),
    value,
    unit: unit ? textOf(reading, unit) : null,
    ...(unit ? { unitSpan: spanOf(reading, unit) } : {}),
  };
}

// Which names an entry refers to, whatever its kind: every name that stands in its syntax.

const isNode = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

/** Names of columns, values and functions anywhere in a piece of syntax, to a depth that no entry reaches. */
export function namesInSyntax(syntax: unknown, into: Set<string> = new Set(), depth = 0): Set<string> {
  if (!isNode(syntax) || depth > 1000) return into;
  if (typeof syntax.name === "string") into.add(syntax.name);
  for (const part of Array.isArray(syntax) ? syntax : Object.values(syntax)) namesInSyntax(part, into, depth + 1);
  return into;
}

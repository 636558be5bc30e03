// What follows from names in a notebook: columns and values made from them, and what is made from those.
import type { Entry } from "../language/index.ts";
import { namesInSyntax } from "./names-in-syntax.ts";

/** The names to start from and everything that is made from them: names of columns and values, until nothing more follows. */
export function dependents(entries: readonly Entry[], start: ReadonlySet<string>): Set<string> {
  const found = new Set(start);
  const makes = entries.flatMap((entry): readonly { readonly name: string; readonly from: ReadonlySet<string> }[] => {
    if (entry.syntax?.kind === "columns")
      return entry.syntax.columns.map((line) => ({ name: line.name.name, from: namesInSyntax(line.expression) }));
    return entry.syntax?.kind === "value" ? [{ name: entry.name, from: namesInSyntax(entry.syntax) }] : [];
  });
  for (let before = -1; before !== found.size; ) {
    before = found.size;
    for (const made of makes) if ([...made.from].some((name) => found.has(name))) found.add(made.name);
  }
  return found;
}

/** Whether any of the names stands in a piece of syntax. */
export const touches = (syntax: unknown, names: ReadonlySet<string>): boolean =>
  [...namesInSyntax(syntax)].some((name) => names.has(name));

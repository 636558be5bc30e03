// How deep a text nests, before it is parsed: brackets in brackets, and conditions in conditions.

/** The deepest place and how deep it is: brackets open there, and every `if` before it. Text in quotes and names in backquotes are left out. */
export function nestingOf(text: string): { readonly depth: number; readonly at: number } {
  let open = 0;
  let conditions = 0;
  let deepest = { depth: 0, at: 0 };
  for (let at = 0; at < text.length; at++) {
    const mark = text[at];
    if (mark === '"' || mark === "`") {
      const end = text.indexOf(mark, at + 1);
      const lineEnd = text.indexOf("\n", at);
      if (end > 0 && (lineEnd < 0 || end < lineEnd)) at = end;
    } else if (mark === "(") open++;
    else if (mark === ")") open = Math.max(0, open - 1);
    else if (
      mark === "i" &&
      text[at + 1] === "f" &&
      !/[\p{L}\p{N}_]/u.test(`${text[at - 1] ?? " "}${text[at + 2] ?? " "}`)
    )
      conditions++;
    if (open + conditions > deepest.depth) deepest = { depth: open + conditions, at };
  }
  return deepest;
}

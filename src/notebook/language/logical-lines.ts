// A body as sentences of a line each: a line that is indented more than the first goes on with the line above.

/** A sentence and where it starts in the body. */
export type LogicalLine = { readonly from: number; readonly text: string };

/** The sentences of a body, blank lines left out; `from` counts UTF-16 units in the body. */
export function logicalLines(body: string): readonly LogicalLine[] {
  const found: { from: number; text: string }[] = [];
  let at = 0;
  let margin = -1;
  for (const raw of body.split("\n")) {
    const line = raw.replace(/\r$/, "");
    const indent = line.length - line.trimStart().length;
    if (line.trim() !== "") {
      const above = found.at(-1);
      if (margin < 0) margin = indent;
      if (above && indent > margin) above.text = body.slice(above.from, at + line.length);
      else found.push({ from: at, text: line });
    }
    at += raw.length + 1;
  }
  return found;
}

// Pasted cells with tabs between them. A sheet puts them there; a message lines its columns up with spaces.

/** The text; where nothing else parts its cells, each run of two or more spaces is a tab, if every line then has as many cells. */
export function tabbedCells(text: string): string {
  if (/[\t,;|]/.test(text)) return text;
  const lines = text.split(/\r\n|\n|\r/).map((line) => line.trim().split(/ {2,}/));
  const filled = lines.filter((cells) => cells.join("") !== "");
  const count = filled[0]?.length ?? 0;
  return count > 1 && filled.every((cells) => cells.length === count)
    ? lines.map((cells) => cells.join("\t")).join("\n")
    : text;
}

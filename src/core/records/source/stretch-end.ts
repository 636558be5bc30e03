const LF = 10;
const CR = 13;

/** Where a stretch without quotes ends: at a delimiter, a line end or the end of the text. */
export function stretchEnd(text: string, from: number, mark: number): number {
  let end = from;
  for (const { length } = text; end < length; end++) {
    const code = text.charCodeAt(end);
    if (code === mark || code === LF || code === CR) break;
  }
  return end;
}

const SPACE = 32;
const QUOTE = 34;

/** Place of the quote that opens a field, after spaces; -1 if none does. `mark`: the delimiter's code, -1 in a file of one column. */
export function openingQuote(text: string, at: number, mark: number): number {
  let open = at;
  if (mark !== SPACE) while (text.charCodeAt(open) === SPACE) open++;
  return text.charCodeAt(open) === QUOTE ? open : -1;
}

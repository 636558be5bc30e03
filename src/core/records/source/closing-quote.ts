// Runs of quotes: one of odd length opens or closes a field, one of even length is quotes within it.
const QUOTE = 34;

function runLength(text: string, start: number): number {
  let end = start;
  while (text.charCodeAt(end) === QUOTE) end++;
  return end - start;
}

/** Where the last run of quotes of odd length begins, -1 if there is none: what opens at or after it stays open. */
export function lastOddRun(text: string): number {
  for (let at = text.lastIndexOf('"'); at >= 0; ) {
    let first = at;
    while (first > 0 && text.charCodeAt(first - 1) === QUOTE) first--;
    if ((at - first + 1) % 2 === 1) return first;
    at = first > 0 ? text.lastIndexOf('"', first - 1) : -1;
  }
  return -1;
}

/** Position of the quote that closes the field opened at `open`, or -1. Doubled quotes inside are one character. */
export function closingQuote(text: string, open: number, lastOdd: number): number {
  const first = runLength(text, open);
  if (first % 2 === 0) return open + first - 1;
  if (lastOdd <= open) return -1;
  for (let at = text.indexOf('"', open + first); at >= 0; ) {
    const run = runLength(text, at);
    if (run % 2 === 1) return at + run - 1;
    at = text.indexOf('"', at + run);
  }
  return -1;
}

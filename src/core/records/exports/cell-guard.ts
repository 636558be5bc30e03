// Keeps spreadsheets from running a cell: an apostrophe before what they would take for a formula, and off again in reading.
// Source: OWASP, CSV Injection (CWE-1236).

/** What begins a formula: = + - @, their full-width forms, tab, the line ends, NUL. */
const STARTS = new Set([..."=+-@＝＋－＠\t\r\n\0"]);
const PLAIN_NEGATIVE = /^-\d+(?:[.,]\d+)?$/;
const MARK = "'";

/** Whether a spreadsheet would run the text that stands behind the apostrophes, if any. */
function isRun(cell: string): boolean {
  let at = 0;
  while (cell[at] === MARK) at++;
  return STARTS.has(cell[at] ?? "") && !PLAIN_NEGATIVE.test(at === 0 ? cell : cell.slice(at));
}

/** The guard put on and taken off: `off(on(cell))` is the cell, whatever it held; one that begins with apostrophes keeps them. */
export const cellGuard = {
  on: (cell: string): string => (isRun(cell) ? MARK + cell : cell),
  off: (cell: string): string => (cell.startsWith(MARK) && isRun(cell) ? cell.slice(1) : cell),
} as const;

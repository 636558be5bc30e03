// The commonest cell of all: digits with at most one point or comma, read by its characters without an object.

/** How a numeral votes on the decimal mark: none without a mark; either-…: its mark may be the decimal one, or groups by three. */
export const numeralVotes = ["no", "none", "point", "comma", "either-point", "either-comma"] as const;
const [MINUS, POINT, COMMA, ZERO, NINE] = [45, 46, 44, 48, 57];
/** Fifteen digits are fewer than 2^53, and a power of ten up to 22 is exact: their quotient is the nearest double to the decimal number. */
const MOST_DIGITS = 15;
const POWERS = Float64Array.from({ length: MOST_DIGITS + 1 }, (_, power) => 10 ** power);

/**
 * Reads `-?digits` or `-?digits.digits` (comma too) between two places of a text, its one mark taken as the decimal one, into
 * `numbers[row]`. Gives the place of its vote in `numeralVotes` plus eight times its decimals; 0 where the text is nothing so plain.
 */
export function plainNumeral(text: string, start: number, end: number, numbers: Float64Array, row: number): number {
  const first = text.charCodeAt(start) === MINUS ? start + 1 : start;
  if (end - first > MOST_DIGITS + 1) return 0;
  let mantissa = 0;
  let mark = 0;
  let markAt = end;
  for (let at = first; at < end; at++) {
    const code = text.charCodeAt(at);
    if (code >= ZERO && code <= NINE) mantissa = mantissa * 10 + (code - ZERO);
    else if ((code === POINT || code === COMMA) && mark === 0) {
      mark = code;
      markAt = at;
    } else return 0;
  }
  const before = markAt - first;
  const after = mark === 0 ? 0 : end - markAt - 1;
  if (before === 0 || (mark !== 0 && after === 0) || before + after > MOST_DIGITS) return 0;
  const value = mantissa / (POWERS[after] ?? 1);
  numbers[row] = first > start ? -value : value;
  if (mark === 0) return 1;
  const sure = after !== 3 || before > 3 || text.charCodeAt(first) === ZERO;
  return (mark === POINT ? 2 : 3) + (sure ? 0 : 2) + 8 * after;
}

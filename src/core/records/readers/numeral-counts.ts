// What is known of the plain numerals of a column together, so that no reader needs to look at each.
import type { RawCells } from "../cells.ts";

/** Places of a scan that are no places of texts: a numeral, and the first of the cells of their own. */
export const NUMERAL = -1;
export const LONE = -2;

/** Numbers of rows. In a workbook they are of its stored numbers, which vote for nothing. */
export type NumeralCounts = {
  readonly all: number;
  /** Those that vote for the point, for the comma, and those whose one mark waits for the column's; of the latter, those with a point. */
  readonly point: number;
  readonly comma: number;
  readonly waiting: number;
  readonly waitingPoint: number;
  /** `0` alone. */
  readonly zeros: number;
  /** No sign, and at most three digits before and after the mark. */
  readonly bare: number;
  /** Digits with a leading zero: 007. */
  readonly padded: number;
  /** Four digits from 1000 to 2999. */
  readonly years: number;
  /** Integers that are days of the years 2000 to 2049 in the 1900 system. */
  readonly serials: number;
  /** The one unit that all have from a workbook's number format. */
  readonly unit: string | null;
  /** A workbook's numbers that are not whole. */
  readonly fractions: number;
};
const [ONE, TWO, ZERO, MINUS] = [49, 50, 48, 45];
export const FIRST_SERIAL = 36526;
export const LAST_SERIAL = 54788;

type ShapeCounts = Pick<NumeralCounts, "zeros" | "bare" | "padded" | "years" | "serials">;

/** What the digits of numerals look like. Of use only where the column's name and unit leave its kind open. */
function shapeCounts({ text, starts, ends }: RawCells, numbers: Float64Array, found: Uint8Array): ShapeCounts {
  let [zeros, bare, padded, years, serials] = [0, 0, 0, 0, 0];
  for (let row = 0; row < found.length; row++) {
    const one = found[row] ?? 0;
    if (one === 0) continue;
    const vote = one & 7;
    const decimals = one >> 3;
    const start = starts[row] ?? 0;
    const size = (ends[row] ?? 0) - start;
    const first = text.charCodeAt(start);
    if (first !== MINUS && decimals <= 3 && size - (vote > 1 ? decimals + 1 : 0) <= 3) bare++;
    if (vote > 1) continue;
    if (first === ZERO) {
      if (size === 1) zeros++;
      else padded++;
    }
    const value = numbers[row] ?? 0;
    if (size === 4 && (first === ONE || first === TWO)) years++;
    if (size === 5 && value >= FIRST_SERIAL && value <= LAST_SERIAL) serials++;
  }
  return { zeros, bare, padded, years, serials };
}

/** How many numerals vote how, by place in `numeralVotes`. */
function voteCounts(found: Uint8Array): Int32Array {
  const votes = new Int32Array(8);
  for (let row = 0; row < found.length; row++) {
    const vote = (found[row] ?? 0) & 7;
    votes[vote] = (votes[vote] ?? 0) + 1;
  }
  return votes;
}

/** Counts what `plainNumeral` found by row, 0 where it found nothing. */
export function numeralCounts(raw: RawCells, numbers: Float64Array, found: Uint8Array): NumeralCounts {
  const [, none = 0, point = 0, comma = 0, waitingPoint = 0, waitingComma = 0] = voteCounts(found);
  const waiting = waitingPoint + waitingComma;
  let known: ShapeCounts | null = null;
  const shapes = () => {
    known ??= shapeCounts(raw, numbers, found);
    return known;
  };
  return {
    all: none + point + comma + waiting,
    point,
    comma,
    waiting,
    waitingPoint,
    get zeros() {
      return shapes().zeros;
    },
    get bare() {
      return shapes().bare;
    },
    get padded() {
      return shapes().padded;
    },
    get years() {
      return shapes().years;
    },
    get serials() {
      return shapes().serials;
    },
    unit: null,
    fractions: 0,
  };
}

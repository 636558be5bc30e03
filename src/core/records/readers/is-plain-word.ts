import { isFormulaLike, specialWords } from "./special-words.ts";

const LONGEST_SPECIAL = 16;
const isDigit = (code: number) => code >= 48 && code <= 57;

/**
 * Whether a stretch of text is a name that a column of texts takes as it stands: visible ASCII, no outer space, no missing word, no formula,
 * no number that a spreadsheet rounded (1.2E+11, 1E+11). Where its characters do not settle that, its text does.
 */
export function isPlainWord(text: string, start: number, end: number): boolean {
  if (end === start || text.charCodeAt(start) === 32 || text.charCodeAt(end - 1) === 32) return false;
  let digits = 0;
  for (let at = start; at < end; at++) {
    const code = text.charCodeAt(at);
    if (code < 32 || code > 126) return false;
    if (isDigit(code)) digits++;
  }
  const first = text.charCodeAt(start);
  const second = end > start + 1 ? text.charCodeAt(start + 1) : 0;
  if (isDigit(first)) return second !== 46 && second !== 44 && second !== 69 && second !== 101;
  const isSign = first === 61 || first === 64 || first === 43 || first === 45;
  if (isSign && isFormulaLike(text.slice(start, end))) return false;
  // Of the special words only errors hold digits, and those begin with # or E.
  const mayBeSpecial = end - start <= LONGEST_SPECIAL && (digits === 0 || first === 35 || first === 69);
  return !mayBeSpecial || specialWords(text.slice(start, end)) === null;
}

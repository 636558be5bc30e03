// In a column of ids, a value that an earlier row has.
import type { Reading } from "../reading.ts";
import type { ColumnSource } from "./column-source.ts";
import { LONE, NUMERAL } from "./numeral-counts.ts";

const SHARE_OF_DIFFERENT = 0.8;

/** A number for each cell's value, equal for equal values; those of plain words are their places. -1: blank, -2: no value. */
function valueNumbers(source: ColumnSource, cells: readonly Reading[]): Int32Array {
  const { texts } = source.scan;
  const numbers = new Map<string, number>();
  if (cells.length > 0)
    for (let place = 0; place < texts.size; place++)
      if ((source.cellAt[place] ?? 0) < 0) numbers.set(texts.text.slice(texts.starts[place], texts.ends[place]), place);
  return Int32Array.from(cells, ({ kind, value }) => {
    if (kind === "blank") return -1;
    if (value === null) return -2;
    const number = numbers.get(String(value)) ?? texts.size + numbers.size;
    numbers.set(String(value), number);
    return number;
  });
}

/** Rows (from 0) whose id an earlier row has, if at least four in five of the ids differ. */
export function repeatedIds(source: ColumnSource, cells: readonly Reading[]): number[] {
  const { places, texts, lone } = source.scan;
  const numberOf = valueNumbers(source, cells);
  const seen = new Uint8Array(texts.size * 2 + cells.length + lone.length + 2);
  const again: number[] = [];
  let [filled, different, lacking] = [0, 0, 0];
  for (let row = 0; row < places.length; row++) {
    const place = places[row] ?? NUMERAL;
    const at = place <= LONE ? cells.length - lone.length + LONE - place : (source.cellAt[place] ?? -1);
    const number = at < 0 ? place : (numberOf[at] ?? -1);
    if (number === -1) continue;
    filled++;
    if (number === -2) {
      lacking = 1;
      continue;
    }
    if (seen[number] === 0) different++;
    else if (at < 0 || cells[at]?.kind === "text") again.push(row);
    seen[number] = 1;
  }
  return different + lacking >= SHARE_OF_DIFFERENT * filled ? again : [];
}

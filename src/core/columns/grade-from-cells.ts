import type { Cells } from "../records/index.ts";
import { kindAt, unitAt, valueAt } from "../records/index.ts";

const LETTERS = ["F", "E", "D", "C", "B", "A", "AA", "AAA"];
const SIGNS = new Map([
  ["--", -2],
  ["-", -1],
  ["o", 0],
  ["O", 0],
  ["0", 0],
  ["+/-", 0],
  ["+", 1],
  ["++", 2],
  ["+++", 3],
  ["---", -3],
]);

/** Where a written grade stands in its order: letters from F up to AAA with plus and minus, signs from -- up to ++; null if it is neither. */
function writtenRank(text: string): number | null {
  const sign = SIGNS.get(text);
  if (sign !== undefined) return sign;
  const mark = text.endsWith("+") ? 0.3 : text.endsWith("-") ? -0.3 : 0;
  const place = LETTERS.indexOf(mark === 0 ? text : text.slice(0, -1));
  return place < 0 ? null : place + mark;
}

/** The scale that most graded cells use; the first at a tie. */
function commonScale(cells: Cells): string | null {
  const counts = new Map<string, number>();
  for (let row = 0; row < cells.length; row++) {
    const unit = kindAt(cells, row) === "grade" ? unitAt(cells, row) : null;
    if (unit !== null) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  }
  let best: string | null = null;
  for (const [scale, count] of counts) if (best === null || count > (counts.get(best) ?? 0)) best = scale;
  return best;
}

/**
 * Ordered grades: levels lowest first, and each cell's level (-1 = missing). On a scale of whole numbers every level up to the top of the scale
 * exists, whether or not it was given. Cells on another scale than the column's commonest are missing and counted in `otherScale`.
 */
export function gradeFromCells(cells: Cells): {
  readonly codes: Int32Array;
  readonly levels: readonly string[];
  readonly otherScale: number;
} {
  const scale = commonScale(cells);
  const ranks = new Map<string, number>();
  let otherScale = 0;
  const texts = Array.from({ length: cells.length }, (_, row) => {
    const value = kindAt(cells, row) === "grade" ? valueAt(cells, row) : null;
    if (value === null) return null;
    const unit = unitAt(cells, row);
    if (scale !== null && unit !== null && unit !== scale) {
      otherScale += 1;
      return null;
    }
    const text = String(value);
    const rank = typeof value === "number" ? value : writtenRank(text);
    if (rank === null || !Number.isFinite(rank)) return null;
    ranks.set(text, rank);
    return text;
  });
  const top = scale?.startsWith("/")
    ? Number(scale.slice(1))
    : Math.max(0, ...[...ranks.values()].filter(() => scale === "*"));
  if (scale !== null && Number.isInteger(top) && top <= 20)
    for (let level = 1; level <= top; level++) ranks.set(String(level), level);
  const levels = [...ranks].sort(([a, m], [b, n]) => m - n || (a < b ? -1 : 1)).map(([text]) => text);
  const place = new Map(levels.map((text, index) => [text, index]));
  return {
    codes: Int32Array.from(texts, (text) => (text === null ? -1 : (place.get(text) ?? -1))),
    levels,
    otherScale,
  };
}

// Columns of grades. All cells are of one sort: amounts on a scale, signs, or letters.
import type { Reading } from "../reading.ts";
import { cellsWith } from "./cells-with.ts";
import type { ColumnCell, ColumnReader, ColumnSource } from "./column-source.ts";
import { hasWord, rowsOf } from "./column-source.ts";
import { reading, unreadable } from "./field.ts";
import type { GradeParts } from "./grade-parts.ts";
import { gradeParts, isSign } from "./grade-parts.ts";

const SCALE_WORDS = new Set([
  "grade",
  "rating",
  "score",
  "rank",
  "quality",
  "note",
  "calificación",
  "bewertung",
  "nota",
]);
const LETTER_WORDS = new Set(["grade", "rating", "class", "quality", "score"]);
const BARE = /^\d{1,3}(?:[.,]\d{1,3})?$/;
type Family = "scale" | "signs" | "letters";
const familyOf = (parts: GradeParts): Family =>
  parts.scale !== null ? "scale" : parts.sort === "signs" ? "signs" : "letters";

const countedOf = (source: ColumnSource) =>
  rowsOf(source.cells, (cell) => cell.special === null || isSign(cell.field.text)) + source.numerals.all;

/** Whether a column has signs: some cell is only of plus signs. There `-` and `--` are grades, not blanks. */
function hasSigns(source: ColumnSource): boolean {
  if (!source.cells.some((cell) => /^\++$/.test(cell.field.text))) return false;
  const signs = rowsOf(source.cells, (cell) => isSign(cell.field.text)) + source.numerals.zeros;
  return signs >= 0.6 * countedOf(source);
}

/** "4/5" is a grade where the name says so, or where all are out of the same number and that is no denominator of an inch. */
function allowsOutOf(source: ColumnSource, all: readonly GradeParts[]): boolean {
  if (hasWord(source, SCALE_WORDS)) return true;
  const scales = new Set(all.filter((parts) => parts.sort === "out-of").map((parts) => parts.scale));
  const [only = "/2"] = scales;
  return scales.size === 1 && !Number.isInteger(Math.log2(Number(only?.slice(1))));
}

function partsOf(source: ColumnSource): (GradeParts | null)[] {
  const signs = hasSigns(source);
  const raw = source.cells.map((cell) =>
    cell.special === null || (signs && isSign(cell.field.text)) ? gradeParts(cell.field.text) : null,
  );
  const outOf = allowsOutOf(
    source,
    raw.filter((parts) => parts !== null),
  );
  const letters = hasWord(source, LETTER_WORDS);
  return raw.map((parts) => {
    if (
      parts === null ||
      (parts.sort === "out-of" && !outOf) ||
      (parts.sort === "letters" && !letters) ||
      (parts.sort === "signs" && !signs)
    )
      return null;
    return parts;
  });
}

/** The family with most cells, and how many those are. */
function family(source: ColumnSource, parts: readonly (GradeParts | null)[]): { family: Family; count: number } {
  const counts: Record<Family, number> = { scale: 0, signs: hasSigns(source) ? source.numerals.zeros : 0, letters: 0 };
  for (const [at, one] of parts.entries()) if (one) counts[familyOf(one)] += source.cells[at]?.rows ?? 0;
  const best = (["scale", "signs", "letters"] as const).reduce((a, b) => (counts[b] > counts[a] ? b : a));
  return { family: best, count: counts[best] };
}

/** Five full stars among cells like ★★★☆☆ are five of five. */
function withFullStars(parts: readonly (GradeParts | null)[]): (GradeParts | null)[] {
  const totals = new Set(
    parts.map((one) => (one?.sort === "hollow-stars" ? one.scale : null)).filter((scale) => scale !== null),
  );
  const [only] = totals;
  if (only === undefined || totals.size > 1) return [...parts];
  return parts.map((one) => (one?.sort === "stars" && `/${one.value}` === only ? { ...one, scale: only } : one));
}

function read(source: ColumnSource) {
  const parts = withFullStars(partsOf(source));
  const main = family(source, parts).family;
  const scales = new Set(
    parts.map((one) => (one && main === "scale" ? one.scale : null)).filter((scale) => scale !== null),
  );
  const [scale = null] = scales;
  const at = new Map(source.cells.map((cell, index) => [cell, parts[index] ?? null]));
  const grade = (cell: ColumnCell): Reading => {
    const one = at.get(cell) ?? null;
    if (one && familyOf(one) === main) return reading(cell.field, "grade", one.value, one.scale);
    if (main === "scale" && scales.size === 1 && BARE.test(cell.field.text))
      return reading(cell.field, "grade", Number(cell.field.text.replace(",", ".")), scale, "scale-assumed");
    return unreadable(cell.field, "unreadable-grade");
  };
  const signs = main === "signs";
  return {
    unit: source.unit,
    cells: cellsWith(source, grade, true, (text) => signs && isSign(text)),
    warnings: scales.size > 1 ? ["mixed-scales"] : [],
  };
}

/** Cells that can be read as grades. Bare numbers count by the name, or beside at least as many on the one scale; signs count though `-` is elsewhere a blank. */
function fits(source: ColumnSource, counted: readonly ColumnCell[]): number {
  const parts = partsOf(source);
  const { family: main, count } = family(source, parts);
  if (main === "signs") {
    const share = count / Math.max(1, countedOf(source));
    return (rowsOf(counted) + source.numerals.all) * share;
  }
  const scales = new Set(parts.map((one) => one?.scale ?? null).filter((scale) => scale !== null));
  const bare =
    main === "scale" && scales.size === 1
      ? rowsOf(counted, (cell) => BARE.test(cell.field.text)) + source.numerals.bare
      : 0;
  return bare <= count || hasWord(source, SCALE_WORDS) ? count + bare : count;
}

export const gradeReader: ColumnReader = { kind: "grade", fits, read };

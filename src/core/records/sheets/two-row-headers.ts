// Headers of two rows: names merged across, and a row of names beneath. They become one row of joined names, and the upper one
// a blank row.
import { isUnitsRow, isWords } from "../layout/is-units-row.ts";
import { heading } from "../readers/heading.ts";
import type { Merge } from "./sheet-grid.ts";

type Fields = readonly string[];

const isFilled = (field: string | undefined): boolean => field !== undefined && field.trim() !== "";
const filledOf = (fields: Fields): number => fields.filter(isFilled).length;

/** The upper names, each over all columns that it is merged across. */
function spread(fields: Fields, merges: readonly Merge[], left: number): string[] {
  const names = [...fields];
  for (const merge of merges)
    for (let place = merge.left - left; place <= merge.right - left && place < names.length; place++)
      if (!isFilled(names[place])) names[place] = fields[merge.left - left] ?? "";
  return names;
}

/** "thickness" over "bass (mm)": "thickness / bass [mm]"; the unit of either, the lower one's first. */
function joinedName(upper: string, lower: string): string {
  if (!isFilled(upper)) return lower;
  if (!isFilled(lower)) return upper;
  const [above, below] = [heading(upper), heading(lower)];
  const unit = below.unit ?? above.unit;
  const name = [above.name, below.name].filter(isFilled).join(" / ");
  return unit === null ? name : `${name} [${unit}]`;
}

/** Whether a row is the upper one of a header: words, merged across over two names or more, and no title by itself. */
function isUpper(upper: Fields, lower: Fields, merges: readonly Merge[], left: number): boolean {
  if (!isWords(upper) || !isWords(lower) || isUnitsRow(lower)) return false;
  if (filledOf(upper) < 2 && merges.some((merge) => merge.left === left)) return false;
  return merges.some((merge) => filledOf(lower.slice(merge.left - left, merge.right - left + 1)) >= 2);
}

/** A header stands first or after a blank row, beneath titles of one field. */
function mayBegin(row: number, rowAt: (row: number) => Fields): boolean {
  let above = row - 1;
  while (filledOf(rowAt(above)) === 1) above--;
  return filledOf(rowAt(above)) === 0;
}

/** Rows to be read otherwise than they stand: row -> fields. `rowAt`: the fields of a row, `left`: the first one's column. */
export function twoRowHeaders(
  rowAt: (row: number) => Fields,
  merges: readonly Merge[],
  left: number,
): ReadonlyMap<number, Fields> {
  const across = new Map<number, Merge[]>();
  for (const merge of merges) {
    if (merge.top !== merge.bottom || merge.right === merge.left) continue;
    const own = across.get(merge.top) ?? [];
    own.push(merge);
    across.set(merge.top, own);
  }
  const made = new Map<number, Fields>();
  for (const [row, own] of across) {
    const [upper, lower] = [rowAt(row), rowAt(row + 1)];
    if (!isUpper(upper, lower, own, left) || !mayBegin(row, rowAt)) continue;
    const names = spread(upper, own, left);
    made.set(row, []);
    made.set(
      row + 1,
      lower.map((name, place) => joinedName(names[place] ?? "", name)),
    );
  }
  return made;
}

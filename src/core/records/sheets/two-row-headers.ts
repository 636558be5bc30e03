// Headers of two rows: names merged across, and a row of names beneath. They become one row of joined names, and the upper one
// a blank row.
import { isUnitsRow, isWords } from "../layout/record-shape.ts";
import { heading } from "../readers/heading.ts";
import type { Merge } from "./sheet-grid.ts";

/** A row of a block by place from its first column: texts, "" for an empty cell. */
export type SheetRow = { readonly row: number; readonly fields: readonly string[] };

const isFilled = (field: string | undefined): boolean => field !== undefined && field.trim() !== "";
const asRecord = ({ row, fields }: SheetRow) => ({ record: row + 1, fields });

/** The upper names, each over all columns that it is merged across. */
function spread({ row, fields }: SheetRow, merges: readonly Merge[], left: number): string[] {
  const names = [...fields];
  for (const merge of merges)
    if (merge.top === row)
      for (let column = merge.left; column <= merge.right; column++)
        if (!isFilled(names[column - left])) names[column - left] = fields[merge.left - left] ?? "";
  return names.slice(0, fields.length);
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
function isUpper(upper: SheetRow, lower: SheetRow | undefined, merges: readonly Merge[], left: number): boolean {
  const own = merges.filter(
    (merge) => merge.top === upper.row && merge.bottom === upper.row && merge.right > merge.left,
  );
  if (!lower || lower.row !== upper.row + 1 || own.length === 0) return false;
  if (!isWords(asRecord(upper)) || !isWords(asRecord(lower)) || isUnitsRow(asRecord(lower))) return false;
  const isTitle = upper.fields.filter(isFilled).length < 2 && own.some((merge) => merge.left === left);
  const names = own.map(
    (merge) => lower.fields.slice(merge.left - left, merge.right - left + 1).filter(isFilled).length,
  );
  return !isTitle && names.some((count) => count >= 2);
}

/** The rows with every header of two rows made one. A header stands first or after a blank row, beneath titles of one field. */
export function twoRowHeaders(rows: readonly SheetRow[], merges: readonly Merge[], left: number): SheetRow[] {
  if (!merges.some((merge) => merge.right > merge.left)) return [...rows];
  const made = [...rows];
  let mayBegin = true;
  for (const [at, upper] of rows.entries()) {
    const before = rows[at - 1];
    if (!before || before.row < upper.row - 1) mayBegin = true;
    const lower = rows[at + 1];
    if (mayBegin && lower && isUpper(upper, lower, merges, left)) {
      const names = spread(upper, merges, left);
      made[at] = { row: upper.row, fields: [] };
      made[at + 1] = {
        row: lower.row,
        fields: lower.fields.map((name, place) => joinedName(names[place] ?? "", name)),
      };
      mayBegin = false;
    } else if (upper.fields.filter(isFilled).length >= 2) mayBegin = false;
  }
  return made;
}

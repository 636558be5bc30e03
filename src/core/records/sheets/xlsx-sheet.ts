// One sheet of XLSX from its markup. Source: ECMA-376 part 1, 18.3.
import type { StoredCell } from "../source/stored-cell.ts";
import {
  type CellFormat,
  lostFormula,
  plainFormat,
  storedBoolean,
  storedError,
  storedNumber,
  storedText,
} from "./cell-format.ts";
import { type CellsLeft, GridMaker, LAST_COLUMN } from "./grid-maker.ts";
import { MarkupReader } from "./markup-reader.ts";
import { richString, withoutEscapes } from "./rich-string.ts";
import type { SheetGrid } from "./sheet-grid.ts";
import { storedDate } from "./stored-date.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";

/** What cells of every sheet of a workbook refer to. */
export type XlsxCommon = {
  readonly strings: readonly string[];
  readonly formats: readonly CellFormat[];
  readonly left: CellsLeft;
};
type Place = { readonly row: number; readonly column: number };
type Written = {
  readonly type: string;
  readonly format: number;
  readonly value: string | null;
  readonly formula: boolean;
};
type Found = { readonly raw: string; readonly stored: StoredCell };

/** The place that "B3" names; NaN in it where it names none. */
function placeOf(reference: string): Place {
  const found = /^\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})$/.exec(reference);
  let column = 0;
  for (const letter of (found?.[1] ?? "").toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return { row: Number(found?.[2] ?? Number.NaN) - 1, column: column - 1 };
}

function numberFound(value: string, format: number, { formats }: XlsxCommon): Found {
  const number = value.trim() === "" ? Number.NaN : Number(value);
  return Number.isFinite(number)
    ? { raw: String(number), stored: storedNumber(number, formats[format] ?? plainFormat) }
    : { raw: value, stored: storedText };
}

function stringFound(value: string, { strings }: XlsxCommon): Found {
  const text = /^\d{1,9}$/.test(value) ? strings[Number(value)] : undefined;
  return text === undefined ? { raw: value, stored: storedError } : { raw: text, stored: storedText };
}

/** How each type of cell is read, by the letter in its markup. */
const types = new Map<string, (value: string, format: number, common: XlsxCommon) => Found>([
  ["n", numberFound],
  ["s", (value, _, common) => stringFound(value, common)],
  ["str", (value) => ({ raw: withoutEscapes(value), stored: storedText })],
  ["inlineStr", (value) => ({ raw: value, stored: storedText })],
  ["b", (value) => ({ raw: value === "1" || value === "true" ? "TRUE" : "FALSE", stored: storedBoolean })],
  ["e", (value) => ({ raw: value, stored: storedError })],
  ["d", (value) => ({ raw: value, stored: storedDate(value) })],
]);

/** What a cell holds, null if nothing. A formula without a result is not nothing; one whose result is no text is. */
function foundIn({ type, format, value, formula }: Written, common: XlsxCommon): Found | null {
  const isEmptyText = value === "" && type !== "n";
  if (formula && (value === null || value === "") && !isEmptyText) return { raw: "", stored: lostFormula };
  if (value === null || value === "") return null;
  const found = (types.get(type) ?? numberFound)(value, format, common);
  return found.raw === "" && found.stored.as === "text" ? null : found;
}

/** The cell just opened, read to its end. */
function written(reader: MarkupReader): Written {
  const type = reader.attribute("t") ?? "n";
  const format = Number(reader.attribute("s") ?? 0);
  const depth = reader.depth;
  let value: string | null = null;
  let formula = false;
  let inValue = false;
  for (let step = reader.next(); step !== "end" && reader.depth >= depth; step = reader.next()) {
    if (step === "text") value = inValue ? (value ?? "") + reader.name : value;
    else if (reader.name === "v") {
      inValue = step === "open";
      value ??= "";
    } else if (reader.name === "is" && step === "open") value = richString(reader);
    else if (reader.name === "f" && step === "open") formula = true;
  }
  return { type, format, value, formula };
}

/** Columns from one to another that are hidden. */
function hideColumns(reader: MarkupReader, maker: GridMaker): void {
  if (!isOn(reader.attribute("hidden"))) return;
  const last = Math.min(Number(reader.attribute("max")), LAST_COLUMN + 1);
  for (let column = Math.max(1, Number(reader.attribute("min"))); column <= last; column++)
    maker.hiddenColumns.add(column - 1);
}

function merge(reference: string, maker: GridMaker): void {
  const [from, to] = reference.split(":").map(placeOf);
  if (!from || !to || Number.isNaN(from.row) || Number.isNaN(to.row)) return;
  maker.merges.push({
    top: Math.min(from.row, to.row),
    left: Math.min(from.column, to.column),
    bottom: Math.max(from.row, to.row),
    right: Math.max(from.column, to.column),
  });
}

const isOn = (value: string | undefined): boolean => value === "1" || value === "true";

/** A sheet's grid from its markup. */
export function xlsxSheet(markup: string, name: string, common: XlsxCommon): SheetGrid | WorkbookTrouble {
  const reader = new MarkupReader(markup);
  const maker = new GridMaker(common.left);
  let row = -1;
  let column = -1;
  let isHidden = false;
  for (let step = reader.next(); step !== "end" && maker.trouble === null; step = reader.next()) {
    if (step !== "open") continue;
    if (reader.name === "row") {
      const stated = reader.attribute("r");
      row = stated === undefined ? row + 1 : Number(stated) - 1;
      column = -1;
      isHidden = isOn(reader.attribute("hidden"));
    } else if (reader.name === "c") {
      const stated = reader.attribute("r");
      const place = stated === undefined ? { row, column: column + 1 } : placeOf(stated);
      column = place.column;
      const found = foundIn(written(reader), common);
      if (found === null) continue;
      maker.add(place.row, place.column, found.raw, found.stored);
      if (isHidden) maker.hideRow(place.row);
    } else if (reader.name === "col") hideColumns(reader, maker);
    else if (reader.name === "mergeCell") merge(reader.attribute("ref") ?? "", maker);
  }
  return reader.trouble ?? maker.trouble ?? maker.finished(name);
}

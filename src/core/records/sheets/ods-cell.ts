// One cell of ODS. Source: OpenDocument 1.3 part 3, 9.1.4 (cells), 19.385 (value types), 6.1 (text).
import { specialWords } from "../readers/special-words.ts";
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
import type { MarkupReader } from "./markup-reader.ts";
import { storedDate } from "./stored-date.ts";

export type OdsCell = { readonly raw: string; readonly stored: StoredCell };

/** What stands in a cell and is not its text: remarks, pictures, how a word is pronounced. */
const ASIDE = new Set(["annotation", "frame", "ruby-text", "custom-shape", "sub-table"]);
const MOST_SPACES = 1000;
const signs = new Map<string, (reader: MarkupReader) => string>([
  ["s", (reader) => " ".repeat(Math.min(Number(reader.attribute("text:c") ?? 1) || 0, MOST_SPACES))],
  ["tab", () => "\t"],
  ["line-break", () => "\n"],
]);

/** The text of the cell just opened, a line for each paragraph; the reader goes to the cell's end. */
function textOf(reader: MarkupReader): string {
  const depth = reader.depth;
  const lines: string[] = [];
  let line: string | null = null;
  let aside = 0;
  for (let step = reader.next(); step !== "end" && reader.depth >= depth; step = reader.next()) {
    if (aside > 0) aside = step === "close" && reader.depth < aside ? 0 : aside;
    else if (step === "text") line = line === null ? null : line + reader.name.replace(/[\n\t]+ */g, " ");
    else if (step === "close") {
      if (reader.name !== "p" || line === null) continue;
      lines.push(line);
      line = null;
    } else if (ASIDE.has(reader.name)) aside = reader.depth;
    else if (reader.name === "p") line = "";
    else if (line !== null) line += signs.get(reader.name)?.(reader) ?? "";
  }
  return lines.join("\n");
}

type Written = { readonly value: string | undefined; readonly text: string; readonly format: CellFormat };

function numberOf({ value = "", text, format }: Written): OdsCell | null {
  const number = value.trim() === "" ? Number.NaN : Number(value);
  if (!Number.isFinite(number)) return value + text === "" ? null : { raw: value || text, stored: storedText };
  return { raw: String(number), stored: storedNumber(number, format) };
}
const textOr = ({ value, text }: Written): OdsCell => ({ raw: value ?? text, stored: storedText });

/** Value type -> the attribute that holds the value, and what becomes of it; null where there is none. */
const types = new Map<string, readonly [attribute: string, read: (written: Written) => OdsCell | null]>([
  ["float", ["office:value", numberOf]],
  ["currency", ["office:value", (written) => numberOf({ ...written, format: plainFormat })]],
  ["percentage", ["office:value", (written) => numberOf({ ...written, format: percentFormat })]],
  ["date", ["office:date-value", ({ value }) => (value ? { raw: value, stored: storedDate(value) } : null)]],
  ["time", ["office:time-value", textOr]],
  [
    "boolean",
    ["office:boolean-value", ({ value }) => (value ? { raw: value.toUpperCase(), stored: storedBoolean } : null)],
  ],
  ["string", ["office:string-value", textOr]],
]);
const percentFormat: CellFormat = { sort: "number", percent: true, unit: null };

/** The cell just opened, null if it is empty. `formatOf`: what its style makes of a number, asked only where it matters. */
export function odsCell(reader: MarkupReader, formatOf: (style: string | undefined) => CellFormat): OdsCell | null {
  const isFormula = reader.attribute("table:formula") !== undefined;
  const isError = reader.attribute("calcext:value-type") === "error";
  const type = types.get(reader.attribute("office:value-type") ?? "");
  const value = type ? reader.attribute(type[0]) : undefined;
  const format = type?.[1] === numberOf ? formatOf(reader.attribute("table:style-name")) : plainFormat;
  const text = textOf(reader);
  if (isError || (isFormula && specialWords(text) === "sheet-error")) return { raw: text, stored: storedError };
  const found = type ? type[1]({ value, text, format }) : isFormula ? null : textOr({ value, text, format });
  if (found === null) return isFormula ? { raw: "", stored: lostFormula } : null;
  return found.raw === "" ? null : found;
}

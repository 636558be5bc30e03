// What the styles of an ODS workbook say about cells: a unit behind the number, hundredths, a table that is not shown.
// Source: OpenDocument 1.3 part 3, 16.29 (data styles), 16.2 (style:style).
import { importUnit } from "../readers/import-unit.ts";
import { type CellFormat, plainFormat } from "./cell-format.ts";
import type { MarkupReader } from "./markup-reader.ts";

/** `tail`: the text behind the number, null where the style scales it; `others`: styles that stand in for it by the number's sign. */
type DataStyle = { percent: boolean; tail: string | null; readonly others: string[] };
export type OdsStyles = {
  readonly data: Map<string, DataStyle>;
  /** Cell style -> its data style and the style that it is made from. */
  readonly cells: Map<string, { readonly data: string | undefined; readonly parent: string | undefined }>;
  readonly hiddenTables: Set<string>;
};

export const noStyles = (): OdsStyles => ({ data: new Map(), cells: new Map(), hiddenTables: new Set() });

const DATA = new Set(["number-style", "percentage-style", "currency-style"]);
const DIGITS = new Set(["number", "scientific-number", "fraction"]);
const LONGEST_LINE = 20;

/** The data style just opened, read to its end. */
function dataStyle(reader: MarkupReader): DataStyle {
  const style: DataStyle = { percent: reader.name === "percentage-style", tail: "", others: [] };
  const depth = reader.depth;
  let inText = false;
  for (let step = reader.next(); step !== "end" && reader.depth >= depth; step = reader.next()) {
    if (step === "text") style.tail = inText && style.tail !== null ? style.tail + reader.name : style.tail;
    else if (reader.name === "text") inText = step === "open";
    else if (step === "open" && DIGITS.has(reader.name))
      style.tail = reader.attribute("number:display-factor") === undefined ? "" : null;
    else if (step === "open" && reader.name === "map")
      style.others.push(reader.attribute("style:apply-style-name") ?? "");
  }
  return style;
}

/** Styles from where the reader stands up to the sheets, or to the end. */
export function readOdsStyles(reader: MarkupReader, styles: OdsStyles): void {
  let table = "";
  for (let step = reader.next(); step !== "end"; step = reader.next()) {
    if (step !== "open") continue;
    if (reader.name === "body") return;
    const name = reader.attribute("style:name") ?? "";
    if (DATA.has(reader.name)) styles.data.set(name, dataStyle(reader));
    else if (reader.name === "table-properties") {
      if (reader.attribute("table:display") === "false") styles.hiddenTables.add(table);
    } else if (reader.name === "style") {
      table = name;
      if (reader.attribute("style:family") === "table-cell")
        styles.cells.set(name, {
          data: reader.attribute("style:data-style-name"),
          parent: reader.attribute("style:parent-style-name"),
        });
    }
  }
}

/** What a cell style makes of a number. */
export function odsFormat(styles: OdsStyles, name: string | undefined): CellFormat {
  let cell = styles.cells.get(name ?? "");
  for (let left = LONGEST_LINE; cell && cell.data === undefined && left > 0; left--)
    cell = styles.cells.get(cell.parent ?? "");
  const own = styles.data.get(cell?.data ?? "");
  if (!own) return plainFormat;
  const tails = [own, ...own.others.flatMap((other) => styles.data.get(other) ?? [])].map(({ tail }) => tail?.trim());
  const [unit] = tails;
  const agreed = unit !== undefined && /[\p{L}%°"″′']/u.test(unit) && tails.every((tail) => tail === unit);
  return { sort: "number", percent: own.percent, unit: agreed && !own.percent ? (importUnit(unit) ?? unit) : null };
}

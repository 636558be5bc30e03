// One sheet of ODS. Rows and cells stand for as many as they say. Source: OpenDocument 1.3 part 3, 9.1.
import { type CellsLeft, GridMaker, LAST_COLUMN } from "./grid-maker.ts";
import type { MarkupReader } from "./markup-reader.ts";
import { type OdsCell, odsCell } from "./ods-cell.ts";
import { type OdsStyles, odsFormat } from "./ods-styles.ts";
import type { SheetGrid } from "./sheet-grid.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";

type Placed = OdsCell & { readonly from: number; readonly to: number };
/** The default style of columns up to one, exclusive. */
type ColumnStyle = { readonly to: number; readonly style: string | undefined };

/** How often an element counts; NaN where it says nonsense. */
function repeated(reader: MarkupReader, attribute: string): number {
  const written = reader.attribute(attribute);
  return written === undefined ? 1 : /^[1-9]\d{0,9}$/.test(written) ? Number(written) : Number.NaN;
}

const isCollapsed = (reader: MarkupReader): boolean =>
  ["collapse", "filter"].includes(reader.attribute("table:visibility") ?? "");

/** The column just opened: hidden or not, and its default style. */
function readColumn(reader: MarkupReader, maker: GridMaker, columns: ColumnStyle[]): void {
  const from = columns.at(-1)?.to ?? 0;
  const to = from + repeated(reader, "table:number-columns-repeated");
  columns.push({ to, style: reader.attribute("table:default-cell-style-name") });
  if (isCollapsed(reader))
    for (let column = from; column < Math.min(to, LAST_COLUMN + 1); column++) maker.hiddenColumns.add(column);
}

/** The row just opened, read to its end: its filled cells. `row`: its place. */
function readRow(
  reader: MarkupReader,
  row: number,
  maker: GridMaker,
  styles: OdsStyles,
  columns: readonly ColumnStyle[],
): Placed[] {
  const depth = reader.depth;
  const style = reader.attribute("table:default-cell-style-name");
  const cells: Placed[] = [];
  let column = 0;
  const formatOf = (own: string | undefined) =>
    odsFormat(styles, own ?? style ?? columns.find(({ to }) => column < to)?.style);
  for (let step = reader.next(); step !== "end" && reader.depth >= depth; step = reader.next()) {
    if (step !== "open" || !reader.name.endsWith("table-cell")) continue;
    const times = repeated(reader, "table:number-columns-repeated");
    const right = column + repeated(reader, "table:number-columns-spanned") - 1;
    const bottom = row + repeated(reader, "table:number-rows-spanned") - 1;
    if (right > column || bottom > row) maker.merges.push({ top: row, left: column, bottom, right });
    const cell = odsCell(reader, formatOf);
    if (Number.isNaN(times)) maker.trouble ??= "broken-workbook";
    if (cell) cells.push({ ...cell, from: column, to: column + times });
    column += times;
  }
  return cells;
}

/** The table just opened, read to its end. */
export function odsSheet(
  reader: MarkupReader,
  name: string,
  styles: OdsStyles,
  left: CellsLeft,
): SheetGrid | WorkbookTrouble {
  const maker = new GridMaker(left);
  const columns: ColumnStyle[] = [];
  const depth = reader.depth;
  let row = 0;
  let folded = 0;
  const addRow = (cells: readonly Placed[], isHidden: boolean) => {
    for (const { raw, stored, from, to } of cells)
      for (let column = from; column < to && maker.trouble === null; column++) maker.add(row, column, raw, stored);
    if (isHidden) maker.hideRow(row);
  };
  for (let step = reader.next(); step !== "end" && reader.depth >= depth; step = reader.next()) {
    if (step === "close" && reader.depth < folded) folded = 0;
    if (step !== "open") continue;
    if (reader.name === "table-column") readColumn(reader, maker, columns);
    else if (reader.name === "table-row-group" && reader.attribute("table:display") === "false")
      folded ||= reader.depth;
    else if (reader.name === "table-row") {
      const times = repeated(reader, "table:number-rows-repeated");
      const isHidden = folded > 0 || isCollapsed(reader);
      const cells = readRow(reader, row, maker, styles, columns);
      if (Number.isNaN(times)) maker.trouble ??= "broken-workbook";
      if (cells.length > 0)
        for (const last = row + times - 1; row < last && maker.trouble === null; row++) addRow(cells, isHidden);
      if (cells.length > 0) addRow(cells, isHidden);
      row += cells.length > 0 ? 1 : times;
    }
  }
  return reader.trouble ?? maker.trouble ?? maker.finished(name);
}

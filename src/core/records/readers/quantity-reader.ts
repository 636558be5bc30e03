// Columns of quantities: decimal mark by the column's evidence, unit by header, units row or cell, uncertainty, and what can't be read.
import type { Reading } from "../reading.ts";
import { amountOf } from "./amount-of.ts";
import type { DecimalMark } from "./atom.ts";
import { cellsWith } from "./cells-with.ts";
import type { ColumnCell, ColumnReader, ColumnReading, ColumnSource } from "./column-source.ts";
import { rowsOf } from "./column-source.ts";
import { decimalEvidence } from "./decimal-evidence.ts";
import { reading, unreadable } from "./field.ts";
import type { QuantityDraft } from "./quantity-draft.ts";
import { draftVote } from "./quantity-draft.ts";
import { sentinels } from "./sentinels.ts";
import { firstCode } from "./without-marks.ts";

const isDraft = (cell: ColumnCell): cell is ColumnCell & { readonly draft: QuantityDraft } =>
  cell.draft !== null && cell.draft.form !== "none";

/** The unit that all cells with a unit share, null if none or several; and how many different ones there are. */
function sharedUnit(source: ColumnSource): { unit: string | null; several: boolean; some: boolean } {
  const units = new Set<string>(source.numerals.unit === null ? [] : [source.numerals.unit]);
  for (const cell of source.cells)
    if (cell.special === null && isDraft(cell) && cell.draft.unit !== null) units.add(cell.draft.unit);
  const [only = null] = units;
  return { unit: units.size === 1 ? only : null, several: units.size > 1, some: units.size > 0 };
}

function readQuantity(
  cell: ColumnCell & { readonly draft: QuantityDraft },
  mark: DecimalMark,
  source: ColumnSource,
  shared: ReturnType<typeof sharedUnit>,
): Reading {
  const { field, draft } = cell;
  const columnUnit = source.unit ?? shared.unit;
  const percentUnit = draft.percent && (columnUnit === "%" || draft.unit === "%");
  const own = draft.unit ?? (percentUnit && source.unit === null ? "%" : null);
  const amount = amountOf(draft, mark, percentUnit);
  if (amount === null) return unreadable(field, "unreadable-number");
  const isFraction = draft.first.shape === "fraction" || draft.second?.shape === "fraction";
  if (isFraction && own === null && columnUnit !== null && columnUnit !== "[in_i]")
    return unreadable(field, "fraction-without-inch");
  const codes = [...draft.marks, ...(draft.form === "range" ? ["range"] : [])];
  if (source.unit !== null && own !== null && own !== source.unit) codes.push("unit-differs");
  if (source.unit === null && own === null && shared.some) codes.push("unit-missing");
  return reading(field, "quantity", amount.value, own ?? source.unit, firstCode(codes), amount.uncertainty);
}

/** Unit and code of the plain numerals: as of a cell that writes their unit, or writes none. */
function numeralsOf({ unit, numerals }: ColumnSource, others: boolean): NonNullable<ColumnReading["numerals"]> {
  if (numerals.unit === null) return { unit, code: unit === null && others ? "unit-missing" : undefined };
  return { unit: numerals.unit, code: unit !== null && unit !== numerals.unit ? "unit-differs" : undefined };
}

/** Whether the plain numerals, each with its one mark as the decimal one, are what the column's evidence makes of them. */
function readsNumerals(source: ColumnSource, neighbours: readonly ColumnSource[]): boolean {
  const { point, comma, waiting, waitingPoint } = source.numerals;
  const { decided } = decimalEvidence(source, neighbours);
  if (decided === null) return waiting === 0;
  return decided === "." ? comma + waiting - waitingPoint === 0 : point + waitingPoint === 0;
}

function readQuantities(source: ColumnSource, neighbours: readonly ColumnSource[]): ColumnReading {
  const evidence = decimalEvidence(source, neighbours);
  const shared = sharedUnit(source);
  const read = (cell: ColumnCell): Reading => {
    if (!isDraft(cell))
      return unreadable(cell.field, cell.draft?.form === "none" ? cell.draft.code : "unreadable-number");
    const vote = draftVote(cell.draft);
    if (vote === null) return readQuantity(cell, ".", source, shared);
    const mark = evidence.decided ?? (vote === "." || vote === "," ? vote : null);
    return mark === null ? unreadable(cell.field, "ambiguous-number") : readQuantity(cell, mark, source, shared);
  };
  const cells = cellsWith(source, read, false);
  const missing = sentinels(source, cells);
  for (const at of missing.cells) {
    const cell = cells[at];
    if (cell && cell.code === undefined) cells[at] = { ...cell, code: "maybe-missing-number" };
  }
  return {
    unit: source.unit ?? shared.unit,
    cells,
    warnings: [...evidence.warnings, ...(source.unit === null && shared.several ? ["mixed-units"] : [])],
    numerals: numeralsOf(source, shared.some),
    rowCodes: new Map(missing.rows.map((row) => [row, "maybe-missing-number"])),
  };
}

const markOf = (draft: QuantityDraft): DecimalMark => (draftVote(draft) === "," ? "," : ".");

/** Whether a cell by itself is a number, whatever the column's decimal mark comes to be. */
const isNumber = (cell: ColumnCell): boolean =>
  !cell.formula &&
  isDraft(cell) &&
  (draftVote(cell.draft) === "either" || amountOf(cell.draft, markOf(cell.draft), false) !== null);

export const quantityReader: ColumnReader = {
  kind: "quantity",
  fits: (source, counted) => source.numerals.all + rowsOf(counted, isNumber),
  readsNumerals,
  read: readQuantities,
};

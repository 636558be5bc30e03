import type { ColumnTable, GradeColumn, LabelColumn, QuantityColumn } from "../../columns/index.ts";

/** `Y across G`, resolved to columns. */
export type ComparisonInput = {
  readonly table: ColumnTable;
  readonly y: QuantityColumn | GradeColumn;
  readonly across: LabelColumn;
  readonly mask: Uint8Array | null;
  readonly by: string | null;
  readonly asked: number;
};

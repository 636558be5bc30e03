import type { Column, ColumnTable, LabelColumn, QuantityColumn } from "../../columns/index.ts";

/** `Y against X [and X2 …]`, resolved to columns. */
export type RelationInput = {
  readonly table: ColumnTable;
  readonly y: QuantityColumn;
  readonly x: readonly QuantityColumn[];
  /** A label: one slope common to its groups; a quantity: a covariate. */
  readonly allowingFor: readonly Column[];
  /** A label: a slope for each of its groups. */
  readonly within: LabelColumn | null;
  /** Straight in the logarithms. */
  readonly powerLaw: boolean;
  /** 1 where the question's condition holds; null for all rows. */
  readonly mask: Uint8Array | null;
  /** Method asked for by name, or null for the default. */
  readonly by: string | null;
  /** Questions asked of the table so far, this one included. */
  readonly asked: number;
};

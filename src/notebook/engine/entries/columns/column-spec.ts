// One formula of a columns entry, its places counted from its own start.
import type { Expression } from "../../../../core/formula/index.ts";

export type ColumnSpec = {
  readonly table: string;
  readonly name: string;
  readonly text: string;
  readonly expression: Expression;
  readonly formulas: readonly string[];
  readonly amounts: readonly string[];
};

// A value entry: its formula and what that names.
import type { Expression } from "../../../../core/formula/index.ts";

export type ValueSpec = {
  readonly key: string;
  readonly name: string;
  readonly text: string;
  readonly expression: Expression;
  readonly amounts: readonly string[];
  readonly usesTable: boolean;
};

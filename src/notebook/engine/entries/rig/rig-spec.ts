// A rig check ready to be run.
import type { Expression } from "../../../../core/formula/index.ts";
import type { NameAt } from "../../../language/index.ts";
import type { SourceLine } from "../../source-table.ts";

export type RigSpec = {
  readonly name: string;
  readonly source: SourceLine;
  readonly reading: NameAt;
  readonly reference: NameAt;
  readonly where: Expression | null;
  readonly amounts: readonly string[];
};

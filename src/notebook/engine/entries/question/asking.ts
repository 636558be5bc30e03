// How one sort of question is asked: what it is given, and what it gives back.
import type { Finding } from "../../../../core/base/index.ts";
import type { Column, ColumnTable } from "../../../../core/columns/index.ts";
import type { Expression } from "../../../../core/formula/index.ts";
import type { PictureColumns } from "../../../../core/pictures/index.ts";
import type { QuestionSyntax } from "../../../language/index.ts";
import type { InReach } from "../../evaluated.ts";

export type AskingContext = {
  readonly table: ColumnTable;
  /** The column of a formula; null when it has a problem, which is noted already. */
  readonly columnOf: (expression: Expression) => Column | null;
  readonly reach: InReach;
  readonly mask: Uint8Array | null;
  readonly by: string | null;
  readonly asked: number;
  readonly lexicon: ReadonlyMap<string, readonly string[]>;
};

export type AskedAnswer = {
  readonly finding: Finding;
  readonly columns: readonly Column[];
  readonly drawn: PictureColumns;
};

/** Null when a formula of the question has a problem. */
export type Asking<A extends QuestionSyntax["asks"]> = (
  question: Extract<QuestionSyntax, { readonly asks: A }>,
  context: AskingContext,
) => AskedAnswer | null;

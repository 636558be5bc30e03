// A question ready to be asked: its syntax, and which values it names.
import type { QuestionSyntax } from "../../../language/index.ts";

export type QuestionSpec = {
  readonly key: string;
  readonly question: QuestionSyntax;
  readonly amounts: readonly string[];
  readonly by: string | null;
  readonly usesLexicon: boolean;
};

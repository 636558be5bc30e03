// A rule ready to be judged: its syntax, its words, and which values it names.
import type { RuleSyntax } from "../../../language/index.ts";

export type RuleSpec = {
  readonly key: string;
  readonly words: string;
  readonly rule: RuleSyntax;
  readonly amounts: readonly string[];
};

import type { EntryKind } from "../../entry-kind.ts";
import { checkRule } from "./check-rule.ts";
import { runRule } from "./run-rule.ts";
import { viewRule } from "./view-rule.ts";

export const rule = {
  id: "rule",
  title: "Rule",
  sentence: "A rule of thumb, with the date on which it was stated.",
  example: "when stiffness_along rises, final_thickness falls\nwithin species\nstated 2024-05-02",
  check: checkRule,
  run: runRule,
  view: viewRule,
} as const satisfies EntryKind;

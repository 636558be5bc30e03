import type { EntryKind } from "../../entry-kind.ts";
import { checkUse } from "./check-use.ts";
import { runUse } from "./run-use.ts";
import { viewUse } from "./view-use.ts";

export const use = {
  id: "use",
  title: "Use",
  sentence: "Columns of another notebook.",
  example: "stiffness_along, density from wood-lab.md",
  check: checkUse,
  run: runUse,
  view: viewUse,
} as const satisfies EntryKind;

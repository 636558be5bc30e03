import type { EntryKind } from "../../entry-kind.ts";
import { checkRigEntry } from "./check-rig-entry.ts";
import { runRig } from "./run-rig.ts";
import { viewRig } from "./view-rig.ts";

export const rig = {
  id: "rig",
  title: "Rig check",
  sentence: "A question about the measuring equipment: its readings beside reference values.",
  example: 'reading against reference in records/rig-checks.csv where rig is "balance"',
  check: checkRigEntry,
  run: runRig,
  view: viewRig,
} as const satisfies EntryKind;

import type { EntryKind } from "../../entry-kind.ts";
import { checkSetting } from "./check-setting.ts";
import { runSetting } from "./run-setting.ts";
import { viewSetting } from "./view-setting.ts";

export const setting = {
  id: "setting",
  title: "Setting",
  sentence: "A named position of dials, one dial a line.",
  example: "target_stiffness 8 N m",
  check: checkSetting,
  run: runSetting,
  view: viewSetting,
} as const satisfies EntryKind;

import type { EntryKind } from "../../entry-kind.ts";
import { checkDial } from "./check-dial.ts";
import { runDial } from "./run-dial.ts";
import { viewDial } from "./view-dial.ts";

export const dial = {
  id: "dial",
  title: "Dial",
  sentence: "A value the reader can turn.",
  example: "9 N m from 5 N m to 15 N m",
  check: checkDial,
  run: runDial,
  view: viewDial,
} as const satisfies EntryKind;

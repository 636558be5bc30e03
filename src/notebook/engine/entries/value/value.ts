import type { EntryKind } from "../../entry-kind.ts";
import { checkValue } from "./check-value.ts";
import { runValue } from "./run-value.ts";
import { viewValue } from "./view-value.ts";

export const value = {
  id: "value",
  title: "Value",
  sentence: "One amount, written down or computed, that formulas and questions can name.",
  example: "0.1 mm + 0.2 mm   in mm",
  check: checkValue,
  run: runValue,
  view: viewValue,
} as const satisfies EntryKind;

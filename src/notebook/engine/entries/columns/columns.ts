import type { EntryKind } from "../../entry-kind.ts";
import { checkColumns } from "./check-columns.ts";
import { runColumns } from "./run-columns.ts";
import { viewColumns } from "./view-columns.ts";

export const columns = {
  id: "columns",
  title: "Columns",
  sentence: "Columns computed from others of the same record table, one formula a line.",
  example: "density = mass / (length * width * thickness)   in kg/m3",
  check: checkColumns,
  run: runColumns,
  view: viewColumns,
} as const satisfies EntryKind;

import type { EntryKind } from "../../entry-kind.ts";
import { checkRecords } from "./check-records.ts";
import { runRecords } from "./run-records.ts";
import { viewRecords } from "./view-records.ts";

export const records = {
  id: "records",
  title: "Records",
  sentence: "A table of measurements, one row a record, and what its columns are for.",
  example: "from records/tops.csv\npiece is top_id\nfinished on finished_on",
  check: checkRecords,
  run: runRecords,
  view: viewRecords,
} as const satisfies EntryKind;

import { cellGuard } from "../exports/cell-guard.ts";
import { fieldAt, type RawRecords } from "./raw-records.ts";

const APOSTROPHE = 39;

/** Records without the guard that an export puts before what a spreadsheet would run. */
export function withoutGuards(records: RawRecords): RawRecords {
  const starts = records.starts.slice();
  const apart = new Map(records.apart);
  for (let at = 0; at < starts.length; at++) {
    const own = apart.has(at);
    if (!own && records.text.charCodeAt(starts[at] ?? 0) !== APOSTROPHE) continue;
    const guarded = fieldAt(records, at);
    const bare = cellGuard.off(guarded);
    if (bare === guarded) continue;
    if (own) apart.set(at, bare);
    else starts[at] = (starts[at] ?? 0) + 1;
  }
  return { ...records, starts, apart };
}

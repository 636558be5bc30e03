// Where the header stands.
import type { RawRecord } from "../source/raw-record.ts";
import { fieldSort } from "./field-sort.ts";
import { isBlankRecord, isComment, isRule, isWords, recordShape } from "./record-shape.ts";

/** The commonest number of filled fields, the larger at a tie. */
function commonest(records: readonly RawRecord[]): number {
  const counts = new Map<number, number>();
  for (const record of records) {
    const filled = recordShape(record);
    if (filled > 0 && !isComment(record) && !isRule(record)) counts.set(filled, (counts.get(filled) ?? 0) + 1);
  }
  let best = 0;
  for (const [filled, count] of counts)
    if (count > (counts.get(best) ?? 0) || (count === counts.get(best) && filled > best)) best = filled;
  return best;
}

/** Place of the header among the records, null if there is none. */
export function headerPlace(records: readonly RawRecord[]): number | null {
  const usual = commonest(records);
  const oneColumn = records.every((record) => record.fields.length <= 1);
  for (const [at, record] of records.entries()) {
    if (isBlankRecord(record) || isComment(record)) continue;
    if (oneColumn) return isWords(record) ? at : null;
    const filled = recordShape(record);
    if (filled >= 2 && filled >= usual / 2 && isWords(record)) return at;
    if (filled >= usual && record.fields.some((field) => ["number", "date"].includes(fieldSort(field)))) return null;
  }
  return null;
}

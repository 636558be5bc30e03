// Where the header stands.

import { isComment } from "../source/is-comment.ts";
import { filledCount, isBlankRecord } from "../source/is-empty-field.ts";
import { fieldsOf, type RawRecords, widthOf } from "../source/raw-records.ts";
import { fieldSort } from "./field-sort.ts";
import { isRule, isWords } from "./is-units-row.ts";

/** The commonest number of filled fields, the larger at a tie. */
function commonest(records: RawRecords): number {
  const counts = new Map<number, number>();
  for (let record = 0; record < records.count; record++) {
    const filled = filledCount(records, record);
    if (filled > 0 && !isComment(records, record) && !isRule(records, record))
      counts.set(filled, (counts.get(filled) ?? 0) + 1);
  }
  let best = 0;
  for (const [filled, count] of counts)
    if (count > (counts.get(best) ?? 0) || (count === counts.get(best) && filled > best)) best = filled;
  return best;
}

function isOneColumn(records: RawRecords): boolean {
  for (let record = 0; record < records.count; record++) if (widthOf(records, record) > 1) return false;
  return true;
}

/** Place of the header among the records, null if there is none. */
export function headerPlace(records: RawRecords): number | null {
  const usual = commonest(records);
  const oneColumn = isOneColumn(records);
  for (let at = 0; at < records.count; at++) {
    if (isBlankRecord(records, at) || isComment(records, at)) continue;
    if (oneColumn) return isWords(fieldsOf(records, at)) ? at : null;
    const filled = filledCount(records, at);
    if (filled >= 2 && filled >= usual / 2 && isWords(fieldsOf(records, at))) return at;
    if (filled >= usual && fieldsOf(records, at).some((field) => ["number", "date"].includes(fieldSort(field))))
      return null;
  }
  return null;
}

import { isComment } from "./is-comment.ts";
import { isBlankRecord, isEmptyAt } from "./is-empty-field.ts";
import { type QuoteTrouble, type RawRecords, widthOf } from "./raw-records.ts";

const firstOf = ({ firsts }: RawRecords, record: number) => firsts[record] ?? 0;

/** Whether the first field of a record, and the last if asked, are empty beside others. */
const isOuter = (records: RawRecords, record: number, last: boolean) =>
  widthOf(records, record) >= 3 &&
  isEmptyAt(records, firstOf(records, record)) &&
  (!last || isEmptyAt(records, firstOf(records, record + 1) - 1));

/** Where every record begins and ends with a pipe, the empty fields outside them are dropped. */
export function withoutOuterPipes(records: RawRecords): RawRecords {
  let parted = 0;
  for (let record = 0; record < records.count; record++) {
    if (widthOf(records, record) < 2 || isBlankRecord(records, record) || isComment(records, record)) continue;
    if (!isOuter(records, record, true)) return records;
    parted++;
  }
  if (parted === 0) return records;
  const [starts, ends] = [new Int32Array(records.starts.length), new Int32Array(records.starts.length)];
  const firsts = new Int32Array(records.count + 1);
  const [apart, codes] = [new Map<number, string>(), new Map<number, QuoteTrouble>()];
  let fields = 0;
  for (let record = 0; record < records.count; record++) {
    firsts[record] = fields;
    const outer = isOuter(records, record, false) ? 1 : 0;
    for (let at = firstOf(records, record) + outer; at < firstOf(records, record + 1) - outer; at++) {
      const [own, code] = [records.apart.get(at), records.codes.get(at)];
      if (own !== undefined) apart.set(fields, own);
      if (code !== undefined) codes.set(fields, code);
      starts[fields] = records.starts[at] ?? 0;
      ends[fields++] = records.ends[at] ?? 0;
    }
  }
  firsts[records.count] = fields;
  return { ...records, starts: starts.subarray(0, fields), ends: ends.subarray(0, fields), firsts, apart, codes };
}

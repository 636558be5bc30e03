// Which character parts the fields: each candidate splits the first 50 records, and the steadiest wins.
import type { RawRecord } from "./raw-record.ts";
import { splitRecords } from "./split-records.ts";
import { withoutOuterPipes } from "./without-outer-pipes.ts";

const CANDIDATES = ["\t", ";", "|", ","];

const isComment = (record: RawRecord) => {
  const first = record.fields[0]?.trimStart() ?? "";
  return first.startsWith("#") || first.startsWith("//");
};

/** Commonest number of fields from 2 up, and the share of records that have it. */
function steadiness(text: string, delimiter: string): { share: number; fields: number } {
  const split = splitRecords(text, delimiter, 50).filter(
    (record) => record.fields.some((field) => field.trim() !== "") && !isComment(record),
  );
  const records = delimiter === "|" ? withoutOuterPipes(split) : split;
  const counts = new Map<number, number>();
  for (const { fields } of records)
    if (fields.length >= 2) counts.set(fields.length, (counts.get(fields.length) ?? 0) + 1);
  let best = { count: 0, fields: 0 };
  for (const [fields, count] of counts)
    if (count > best.count || (count === best.count && fields > best.fields)) best = { count, fields };
  return { share: best.count / Math.max(1, records.length), fields: best.fields };
}

/** The delimiter of a text, null where no candidate parts two fields. */
export function delimiterVote(text: string): string | null {
  let best: { delimiter: string; share: number; fields: number } | null = null;
  for (const delimiter of CANDIDATES) {
    if (!text.includes(delimiter)) continue;
    const { share, fields } = steadiness(text, delimiter);
    if (fields >= 2 && (!best || share > best.share || (share === best.share && fields > best.fields)))
      best = { delimiter, share, fields };
  }
  return best?.delimiter ?? null;
}

// Which character parts the fields: each candidate splits the first 50 records, and the steadiest wins.

import { isComment } from "./is-comment.ts";
import { isBlankRecord } from "./is-empty-field.ts";
import { widthOf } from "./raw-records.ts";
import { splitRecords } from "./split-records.ts";
import { withoutOuterPipes } from "./without-outer-pipes.ts";

const CANDIDATES = ["\t", ";", "|", ","];

/** Commonest number of fields from 2 up, and the share of records that have it. */
function steadiness(text: string, delimiter: string, start: number): { share: number; fields: number } {
  const split = splitRecords(text, delimiter, start, 50);
  const records = delimiter === "|" ? withoutOuterPipes(split) : split;
  const counts = new Map<number, number>();
  let voters = 0;
  for (let record = 0; record < split.count; record++) {
    if (isBlankRecord(split, record) || isComment(split, record)) continue;
    voters++;
    const fields = widthOf(records, record);
    if (fields >= 2) counts.set(fields, (counts.get(fields) ?? 0) + 1);
  }
  let best = { count: 0, fields: 0 };
  for (const [fields, count] of counts)
    if (count > best.count || (count === best.count && fields > best.fields)) best = { count, fields };
  return { share: best.count / Math.max(1, voters), fields: best.fields };
}

/** The delimiter of a text from a place on, null where no candidate parts two fields. */
export function delimiterVote(text: string, start = 0): string | null {
  let best: { delimiter: string; share: number; fields: number } | null = null;
  for (const delimiter of CANDIDATES) {
    if (!text.includes(delimiter, start)) continue;
    const { share, fields } = steadiness(text, delimiter, start);
    if (fields >= 2 && (!best || share > best.share || (share === best.share && fields > best.fields)))
      best = { delimiter, share, fields };
  }
  return best?.delimiter ?? null;
}

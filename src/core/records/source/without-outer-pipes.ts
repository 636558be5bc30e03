import type { RawRecord } from "./raw-record.ts";

const isEmpty = (field: string | undefined) => field !== undefined && field.trim() === "";

/** Where every record begins and ends with a pipe, the empty fields outside them are dropped. */
export function withoutOuterPipes(records: readonly RawRecord[]): RawRecord[] {
  const parted = records.filter(({ fields }) => fields.length >= 2 && fields.some((field) => field.trim() !== ""));
  const outer =
    parted.length > 0 &&
    parted.every(({ fields }) => fields.length >= 3 && isEmpty(fields[0]) && isEmpty(fields.at(-1)));
  if (!outer) return [...records];
  return records.map((record) => {
    if (record.fields.length < 3 || !isEmpty(record.fields[0])) return record;
    const codes = record.codes && new Map([...record.codes].map(([at, code]) => [at - 1, code] as const));
    return { record: record.record, fields: record.fields.slice(1, -1), ...(codes ? { codes } : {}) };
  });
}

import type { Caution } from "../base/index.ts";
import type { Sample } from "./sample-from-columns.ts";

const MANY = 5;

/** The cautions every answer may need: few records, records set aside, many questions. need: below this many records there is a caution. */
export function commonCautions(sample: Sample, asked: number, need: number): readonly Caution[] {
  const have = sample.rows.length;
  const count = sample.setAside.filter((one) => one.why !== "where").length;
  return [
    ...(have < need ? [{ code: "few-records", facts: { have, need } } as const] : []),
    ...(count > 0 ? [{ code: "records-set-aside", facts: { count } } as const] : []),
    ...(asked > MANY ? [{ code: "many-questions", facts: { asked } } as const] : []),
  ];
}

import type { Caution } from "../base/index.ts";
import type { Sample } from "./sample-from-columns.ts";
import type { SharedClusters } from "./shared-clusters.ts";

const MANY = 5;

/**
 * The cautions every answer may need: few records, records set aside, many questions, pieces that are not separate evidence.
 * need: below this many records there is a caution. shared: what the sample's pieces share, null where the answer infers nothing from their number.
 */
export function commonCautions(
  sample: Sample,
  asked: number,
  need: number,
  shared: SharedClusters | null,
): readonly Caution[] {
  const have = sample.rows.length;
  const count = sample.setAside.filter((one) => one.why !== "where").length;
  const column = shared?.column.replaceAll("_", " ") ?? "";
  return [
    ...(have < need ? [{ code: "few-records", facts: { have, need } } as const] : []),
    ...(count > 0 ? [{ code: "records-set-aside", facts: { count } } as const] : []),
    ...(asked > MANY ? [{ code: "many-questions", facts: { asked } } as const] : []),
    ...(shared ? [{ code: "pieces-share", facts: { column, groups: shared.clusters, records: have } } as const] : []),
  ];
}

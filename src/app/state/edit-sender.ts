import type { RecordEdit, RecordsPage } from "../../core/records/index.ts";
import type { Asked } from "./ask-server.ts";
import type { RecordsApi } from "./records-api.ts";

/** Sends edits of a file, one lot at a time; null while another is under way. */
export type EditSender = (
  file: string,
  base: string,
  edits: readonly RecordEdit[],
) => Promise<Asked<RecordsPage> | null>;

/** A sender over an api. What is sent again because no answer came keeps its id, so that it is done once. */
export function editSender(api: RecordsApi, newId: () => string): EditSender {
  let busy = false;
  const last = { what: "", id: "" };
  return async (file, base, edits) => {
    if (busy) return null;
    busy = true;
    const what = JSON.stringify([file, base, edits]);
    if (what !== last.what) [last.what, last.id] = [what, newId()];
    const asked = await api.edit(file, base, last.id, edits);
    if (asked.ok) last.what = "";
    busy = false;
    return asked;
  };
}

import type { ReadOptions } from "../read-options.ts";
import { delimitedSource, recordText } from "./delimited-source.ts";
import { type CarriedAside, fileMark, type LoggedStep } from "./edit-log-line.ts";
import type { EditedRecords } from "./edited-records.ts";

/**
 * What the log says before the edits are written into the file: the mark it will have, the rows set aside by their records there, and what
 * had found no place. Null where no edit would change the file.
 */
export function writingStep(state: EditedRecords, options: ReadOptions): LoggedStep | null {
  const changes = state.tables.some(
    ({ before, added }) => added.size > 0 || [...before.values()].some(({ size }) => size > 0),
  );
  const written = changes ? delimitedSource(state.bytes, options) : null;
  if (written === null) return null;
  const aside = state.result.tables.flatMap((table, at): CarriedAside[] =>
    [...(state.tables[at]?.setAside ?? [])].map(([row, reason]) => {
      const record = table.records[row] ?? 0;
      return { table: at + 1, row: { record, text: recordText(written, record) ?? "" }, reason };
    }),
  );
  const { open, lost } = state.unplaced;
  return { what: "writing", mark: fileMark(state.bytes), aside: [...aside, ...lost], open };
}

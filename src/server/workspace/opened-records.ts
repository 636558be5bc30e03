// A record file read with its description and the log of its edits, as all three lie in the folder now. The last few are kept read.
import { createHash } from "node:crypto";
import {
  descriptionFromJson,
  type EditedRecords,
  type EditLog,
  editedRecords,
  editLogFromBytes,
  type ReadOptions,
  type TableDescription,
} from "../../core/records/index.ts";
import { descriptionPath, editsPath } from "../../notebook/engine/index.ts";

/** `digest`: of the file and the whole lines of its log; what an edit names as its base. */
export type OpenedRecords = {
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly logBytes: Uint8Array;
  readonly log: EditLog;
  /** What the description beside it says; nothing where it is not understood. */
  readonly said: TableDescription;
  readonly options: ReadOptions;
  /** What columns mean, by their names. */
  readonly meanings: ReadonlyMap<string, string>;
  readonly digest: string;
  readonly state: EditedRecords;
};

const KEPT_OPEN = 4;
const NOTHING = new Uint8Array();

/** What a description says of reading and of columns; one that is not understood says nothing. */
function saidIn(bytes: Uint8Array | null): Pick<OpenedRecords, "said" | "options" | "meanings"> {
  const about = bytes === null ? null : descriptionFromJson(new TextDecoder().decode(bytes));
  const said = about?.ok ? about.value : {};
  const { read = {}, columns = {} } = said;
  const meanings = Object.entries(columns).flatMap(([name, { meaning }]) =>
    meaning === undefined ? [] : [[name, meaning] as const],
  );
  return { said, options: read, meanings: new Map(meanings) };
}

/** The file with another log: what it would be, or is, after an edit. `state`: as it was with the last one, if it was read. */
export async function withLog(
  opened: Omit<OpenedRecords, "log" | "state" | "digest"> & { readonly state?: EditedRecords },
): Promise<OpenedRecords> {
  const { file, bytes, logBytes, options, said } = opened;
  const log = editLogFromBytes(logBytes);
  const digest = createHash("sha256").update(bytes).update("\0").update(logBytes.subarray(0, log.whole)).digest("hex");
  return { ...opened, log, digest, state: await editedRecords(bytes, file, options, log, said, opened.state) };
}

export type RecordsShelf = {
  /** Null where there is no such file. */
  readonly open: (file: string) => Promise<OpenedRecords | null>;
  readonly keep: (opened: OpenedRecords) => void;
};

/** Opens record files that are read with `read`. What is the same as last time is not read again. */
export function recordsShelf(read: (name: string) => Promise<Uint8Array | null>): RecordsShelf {
  const kept = new Map<string, OpenedRecords>();
  const keep = (opened: OpenedRecords): void => {
    kept.delete(opened.file);
    kept.set(opened.file, opened);
    for (const file of kept.keys()) if (kept.size > KEPT_OPEN) kept.delete(file);
  };
  const same = (a: Uint8Array, b: Uint8Array) => Buffer.compare(a, b) === 0;
  return {
    keep,
    open: async (file) => {
      const [bytes, log, about] = await Promise.all([read(file), read(editsPath(file)), read(descriptionPath(file))]);
      if (bytes === null) return null;
      const last = kept.get(file);
      const [logBytes, said] = [log ?? NOTHING, saidIn(about)];
      const unchanged =
        last !== undefined &&
        same(last.bytes, bytes) &&
        same(last.logBytes, logBytes) &&
        JSON.stringify(last.said) === JSON.stringify(said.said);
      const opened = unchanged ? last : await withLog({ file, bytes, logBytes, ...said });
      keep(opened);
      return opened;
    },
  };
}

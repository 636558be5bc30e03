// Record files as the grid works on them: read with their edits, and edited one request after another.
import * as files from "node:fs/promises";
import {
  editProblem,
  type PageWish,
  pageOfRecords,
  type RecordEdit,
  type RecordsListing,
  type RecordsPage,
} from "../../core/records/index.ts";
import { type OpenedRecords, recordsShelf } from "./opened-records.ts";
import { recordsWriter, type Written } from "./records-writer.ts";
import type { SavingFiles } from "./save-file.ts";

type Undone =
  | Exclude<Written, { readonly done: true }>
  | { readonly done: false; readonly because: "missing" }
  | { readonly done: false; readonly because: "held"; readonly holder: number }
  | { readonly done: false; readonly because: "failed"; readonly error: NodeJS.ErrnoException };
/** What came of a request: the page as it is now, or why nothing was done. */
export type RecordsOutcome = { readonly done: true; readonly page: RecordsPage } | Undone;

/** One request: `base` is the digest that the page had; `id` says that it is the same when it comes twice. */
export type EditRequest = { readonly base: string; readonly id: string; readonly edits: readonly RecordEdit[] };

export type RecordsDesk = {
  readonly list: () => Promise<readonly RecordsListing[]>;
  readonly page: (file: string, wish: PageWish) => Promise<RecordsOutcome>;
  readonly edit: (file: string, request: EditRequest, wish: PageWish) => Promise<RecordsOutcome>;
  /** Writes the edits into the file itself; the old one is kept beside it. */
  readonly write: (file: string, request: Omit<EditRequest, "edits">, wish: PageWish) => Promise<RecordsOutcome>;
  /** Waits for what is under way. */
  readonly close: () => Promise<void>;
};

export type RecordsDeskOptions = {
  readonly folder: string;
  /** Names of the record files. */
  readonly names: () => Promise<readonly string[]>;
  /** Bytes of a file of the folder, logs of edits among them. */
  readonly read: (name: string) => Promise<Uint8Array | null>;
  /** The process that writes in the folder in our place. */
  readonly holder: () => Promise<number | null>;
  /** Told of each file that was changed here. */
  readonly changed: (file: string) => void;
  readonly now: () => Date;
  readonly disk?: SavingFiles;
};

/** The desk over a folder. */
export function recordsDesk(options: RecordsDeskOptions): RecordsDesk {
  const shelf = recordsShelf(options.read);
  const writer = recordsWriter(options.folder, options.now, options.disk ?? files);
  const turns = new Map<string, Promise<unknown>>();

  function inTurn<T>(file: string, work: () => Promise<T>): Promise<T> {
    const next = (turns.get(file) ?? Promise.resolve()).then(work);
    const settled = next.catch(() => undefined);
    turns.set(file, settled);
    return next;
  }

  async function paged(opened: OpenedRecords, wish: PageWish): Promise<RecordsOutcome> {
    const holder = await options.holder();
    const { file, state, log, digest } = opened;
    const canSetAside = holder === null && !log.newer && state.result.tables.length > 0;
    const editable = canSetAside && state.behind.source() !== null;
    const problems = holder === null ? state.problems : [editProblem("folder-held", { holder }), ...state.problems];
    const about = { file, digest, canSetAside, editable, problems };
    return { done: true, page: pageOfRecords(state, wish, about, opened.meanings) };
  }

  /** The file, ready to be changed by a request; how many of the request's edits are made already. */
  async function ready(
    file: string,
    { base, id }: Omit<EditRequest, "edits">,
  ): Promise<{ readonly done: true; readonly opened: OpenedRecords; readonly made: number } | Undone> {
    const holder = await options.holder();
    if (holder !== null) return { done: false, because: "held", holder };
    const opened = await shelf.open(file);
    if (opened === null) return { done: false, because: "missing" };
    const { log, digest: theirs } = opened;
    const made = log.lines.filter((line) => line.id === id).length;
    if (made === 0 && theirs !== base) return { done: false, because: "stale", theirs };
    if (log.newer) return { done: false, because: "refused", problem: editProblem("log-newer", {}), theirs };
    return { done: true, opened: await writer.confirmed(opened), made };
  }

  async function change(
    file: string,
    request: Omit<EditRequest, "edits">,
    wish: PageWish,
    work: (opened: OpenedRecords, made: number) => Promise<Written>,
  ): Promise<RecordsOutcome> {
    try {
      const start = await ready(file, request);
      if (!start.done) return start;
      const worked = await work(start.opened, start.made);
      if (!worked.done) return worked;
      shelf.keep(worked.opened);
      options.changed(file);
      return await paged(worked.opened, wish);
    } catch (failure) {
      if (typeof (failure as NodeJS.ErrnoException).code !== "string") throw failure;
      return { done: false, because: "failed", error: failure as NodeJS.ErrnoException };
    }
  }

  return {
    list: async () => {
      const listings: RecordsListing[] = [];
      for (const file of await options.names()) {
        const tables = (await shelf.open(file))?.state.result.tables ?? [];
        listings.push({ file, tables: tables.length, rows: tables.reduce((sum, { rowCount }) => sum + rowCount, 0) });
      }
      return listings;
    },
    page: async (file, wish) => {
      const opened = await shelf.open(file);
      return opened ? paged(opened, wish) : { done: false, because: "missing" };
    },
    edit: (file, request, wish) =>
      inTurn(file, () =>
        change(file, request, wish, async (opened, made) => {
          const left = request.edits.slice(made);
          return left.length === 0 ? { done: true, opened } : writer.edit(opened, request.id, left);
        }),
      ),
    write: (file, request, wish) =>
      inTurn(file, () => change(file, request, wish, (opened) => writer.write(opened, request.id))),
    close: async () => void (await Promise.all(turns.values())),
  };
}

// Opens a folder as a workspace: the only place in the server that knows where files lie.
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import type { Drawing, Picture } from "../../core/base/index.ts";
import { limits } from "../../core/base/index.ts";
import { editsPath } from "../../notebook/engine/index.ts";
import { notebookFromText } from "../../notebook/language/index.ts";
import { pageData } from "../../notebook/share/index.ts";
import { digest } from "./digest.ts";
import { fileEndings } from "./file-endings.ts";
import { folderLock } from "./folder-lock.ts";
import { notebookDesk } from "./notebook-desk.ts";
import { recordsDesk } from "./records-desk.ts";
import { removeLeftovers } from "./remove-leftovers.ts";
import { openInside, safePath } from "./safe-path.ts";
import type { SaveOutcome } from "./save-file.ts";
import { saveFile } from "./save-file.ts";
import type { TakenIn } from "./take-in.ts";
import { takeIn } from "./take-in.ts";
import { watchFolder } from "./watch-folder.ts";
import type { NotebookListing, SharedCopy, ShareWish, Workspace } from "./workspace.ts";

export type WorkspaceOptions = {
  readonly version: string;
  /** Draws a picture; given from outside because it needs a document. */
  readonly draw: (picture: Picture) => Drawing;
  readonly share: (wish: ShareWish, read: (name: string) => Promise<Uint8Array | null>) => Promise<SharedCopy>;
  /** Whether changes from outside are watched for. */
  readonly watch: boolean;
  /** Told what was tidied up when the folder was opened. */
  readonly log?: (line: string) => void;
};

/** Ending of the logs of edits: read to compute with, and never served. */
const LOG_ENDING = editsPath("");

/** The record files of a folder and of its folder of records, by name. */
async function tableFiles(folder: string): Promise<readonly string[]> {
  const within = async (part: string) =>
    (await readdir(join(folder, part)).catch(() => [])).map((name) => (part === "" ? name : `${part}/${name}`));
  const names = [...(await within("")), ...(await within("records"))];
  return names.filter((name) => safePath(name, fileEndings.tables) !== null).sort((a, b) => (a < b ? -1 : 1));
}

/** The workspace of a folder. */
export function openWorkspace(folder: string, options: WorkspaceOptions): Workspace {
  const listeners = new Set<(file: string) => void>();
  const saving = new Map<string, Promise<SaveOutcome>>();
  let taking: Promise<TakenIn | null> = Promise.resolve(null);

  const read = (name: string) => readWithin(safePath(name, fileEndings.readable));
  /** Bytes of a file to compute with: logs of edits too. */
  const readAll = (name: string) =>
    readWithin(safePath(name, name.endsWith(LOG_ENDING) ? fileEndings.tables.map(editsPath) : fileEndings.readable));

  async function readWithin(path: string | null): Promise<Uint8Array | null> {
    const handle = path === null ? null : await openInside(folder, path);
    if (handle === null) return null;
    try {
      const limit = path?.endsWith(".md") ? limits.notebookBytes.value : limits.tableBytes.value;
      return (await handle.stat()).size > limit ? null : await handle.readFile();
    } finally {
      await handle.close();
    }
  }

  const lock = folderLock(folder);
  const tidied = lock.holder().then(async (holder) => {
    if (holder !== null) options.log?.(`Process ${holder} works in ${folder}; it is only read here.`);
    else await removeLeftovers([folder, join(folder, "records")], Date.now(), options.log ?? (() => undefined));
  });
  const desk = notebookDesk(readAll, options.version);
  const tell = (file: string) => {
    for (const listener of listeners) listener(file);
  };
  const stopWatching = options.watch
    ? watchFolder(folder, (file) => {
        if (!file.endsWith(".md")) desk.clear();
        tell(file.endsWith(LOG_ENDING) ? file.slice(0, -LOG_ENDING.length) : file);
      })
    : async () => undefined;
  const records = recordsDesk({
    folder,
    names: () => tableFiles(folder),
    read: readAll,
    holder: lock.holder,
    changed: desk.clear,
    now: () => new Date(),
  });

  async function listing(file: string): Promise<NotebookListing> {
    const bytes = await read(file);
    const notebook = notebookFromText(bytes === null ? "" : new TextDecoder().decode(bytes), file);
    const written = notebook.frontMatter.written;
    return { file, title: notebook.title || file, written: typeof written === "string" ? written : null };
  }

  return {
    notebooks: async () => {
      const names = (await readdir(folder, { withFileTypes: true }))
        .filter(
          (entry) =>
            !entry.isDirectory() &&
            entry.name.toLowerCase() !== "readme.md" &&
            safePath(entry.name, fileEndings.writable) !== null,
        )
        .map((entry) => entry.name)
        .sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
      return Promise.all(names.map(listing));
    },
    read,
    save: (name, bytes, base) => {
      const before = saving.get(name) ?? Promise.resolve();
      const next = before.then(async (): Promise<SaveOutcome> => {
        const holder = await lock.holder();
        if (holder !== null) return { saved: false, because: "held", holder };
        return saveFile(join(folder, ...name.split("/")), bytes, base);
      });
      saving.set(name, next);
      return next;
    },
    takeIn: (wanted) => {
      const next = taking.then(async (): Promise<TakenIn> => {
        const holder = await lock.holder();
        if (holder !== null) return { taken: false, because: "held", holder };
        return takeIn(folder, wanted, new Date().toISOString().slice(0, 10));
      });
      taking = next;
      return next.finally(desk.clear);
    },
    descriptions: async () =>
      (await readdir(join(folder, "records")).catch(() => []))
        .filter((name) => name.endsWith(".about.json"))
        .map((name) => `records/${name}`),
    compute: async (file, text, dials) =>
      pageData({
        file,
        text,
        digest: digest(new TextEncoder().encode(text)),
        result: await desk.result(file, text, dials),
        draw: options.draw,
      }),
    trace: desk.trace,
    share: (wish) => options.share(wish, readAll),
    records,
    holder: lock.holder,
    onChange: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close: async () => {
      await Promise.all([stopWatching(), tidied, taking, records.close(), ...saving.values()]);
      desk.clear();
      await lock.release();
    },
  };
}

// Opens a folder as a workspace: the only place in the server that knows where files lie.
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import type { Drawing, Picture } from "../../core/base/index.ts";
import { limits } from "../../core/base/index.ts";
import { notebookFromText } from "../../notebook/language/index.ts";
import { pageData } from "../../notebook/share/index.ts";
import { digest } from "./digest.ts";
import { fileEndings } from "./file-endings.ts";
import { notebookDesk } from "./notebook-desk.ts";
import { openInside, safePath } from "./safe-path.ts";
import type { SaveOutcome } from "./save-file.ts";
import { saveFile } from "./save-file.ts";
import { watchFolder } from "./watch-folder.ts";
import type { NotebookListing, SharedCopy, ShareWish, Workspace } from "./workspace.ts";

export type WorkspaceOptions = {
  readonly version: string;
  /** Draws a picture; given from outside because it needs a document. */
  readonly draw: (picture: Picture) => Drawing;
  readonly share: (wish: ShareWish, read: (name: string) => Promise<Uint8Array | null>) => Promise<SharedCopy>;
  /** Whether changes from outside are watched for. */
  readonly watch: boolean;
};

/** The workspace of a folder. */
export function openWorkspace(folder: string, options: WorkspaceOptions): Workspace {
  const listeners = new Set<(file: string) => void>();
  const saving = new Map<string, Promise<SaveOutcome>>();

  async function read(name: string): Promise<Uint8Array | null> {
    const path = safePath(name, fileEndings.readable);
    const handle = path === null ? null : await openInside(folder, path);
    if (handle === null) return null;
    try {
      const limit = name.endsWith(".md") ? limits.notebookBytes.value : limits.tableBytes.value;
      return (await handle.stat()).size > limit ? null : await handle.readFile();
    } finally {
      await handle.close();
    }
  }

  const desk = notebookDesk(read, options.version);
  const stopWatching = options.watch
    ? watchFolder(folder, (file) => {
        if (!file.endsWith(".md")) desk.clear();
        for (const listener of listeners) listener(file);
      })
    : async () => undefined;

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
      const next = before.then(() => saveFile(join(folder, ...name.split("/")), bytes, base));
      saving.set(name, next);
      return next;
    },
    compute: async (file, text, dials) =>
      pageData({
        file,
        text,
        digest: digest(new TextEncoder().encode(text)),
        result: await desk.result(file, text, dials),
        draw: options.draw,
      }),
    trace: desk.trace,
    share: (wish) => options.share(wish, read),
    onChange: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close: async () => {
      await Promise.all([stopWatching(), ...saving.values()]);
      desk.clear();
    },
  };
}

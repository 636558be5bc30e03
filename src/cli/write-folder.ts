// A folder of files is made whole or not at all: filled beside under another name, and only then given its own.
import { randomBytes } from "node:crypto";
import * as files from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import type { Written } from "./surface.ts";
import { codeOf, flushed } from "./write-whole.ts";

/** The operations, as an argument, so that tests make each one fail. */
export type FolderFiles = Pick<typeof files, "lstat" | "mkdir" | "open" | "readdir" | "rename" | "rm">;

/** Whether something stands at the place that is no empty folder. A link is never followed. */
async function isTaken(disk: FolderFiles, path: string): Promise<boolean> {
  const found = await disk.lstat(path).catch((failure: unknown) => {
    if (codeOf(failure) === "ENOENT") return null;
    throw failure;
  });
  return found !== null && (!found.isDirectory() || (await disk.readdir(path)).length > 0);
}

async function filled(disk: FolderFiles, folder: string, contents: ReadonlyMap<string, string>): Promise<void> {
  const folders = new Set([folder]);
  for (const [name, text] of contents) {
    const path = join(folder, name);
    folders.add(dirname(path));
    await disk.mkdir(dirname(path), { recursive: true });
    const handle = await disk.open(path, "wx");
    try {
      await handle.writeFile(text);
      await handle.sync();
    } finally {
      await handle.close();
    }
  }
  for (const each of folders) await flushed(disk, each);
}

/** Makes the folder, or puts it in place of an empty one. contents: texts by path within it. What is there already stays: "taken". */
export async function writeFolder(
  path: string,
  contents: ReadonlyMap<string, string>,
  disk: FolderFiles = files,
): Promise<Written> {
  const place = resolve(path);
  const above = dirname(place);
  const beside = join(above, `.${basename(place)}.${randomBytes(6).toString("hex")}.making`);
  try {
    if (await isTaken(disk, place)) return { ok: false, reason: "taken" };
    await disk.mkdir(above, { recursive: true });
    await filled(disk, beside, contents);
    await disk.rename(beside, place);
    await flushed(disk, above);
    return { ok: true };
  } catch (failure) {
    await disk.rm(beside, { recursive: true, force: true }).catch(() => undefined);
    return { ok: false, reason: ["ENOTEMPTY", "EEXIST"].includes(codeOf(failure)) ? "taken" : codeOf(failure) };
  }
}

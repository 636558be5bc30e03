// A file of the command line's own making is written whole or not at all, as a save of the service is.
import { randomBytes } from "node:crypto";
import * as files from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { pid } from "node:process";
import type { Written } from "./surface.ts";

/** The operations of a write, as an argument, so that tests make each one fail. */
export type WritingFiles = Pick<typeof files, "open" | "rename" | "rm">;

/** The system's code of a failure. */
export const codeOf = (failure: unknown): string =>
  failure instanceof Error && "code" in failure ? String(failure.code) : "unknown";

/** Flushes the names that a folder holds. */
export async function flushed(disk: Pick<WritingFiles, "open">, folder: string): Promise<void> {
  const handle = await disk.open(folder, "r");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/**
 * Written beside, flushed, renamed over the old name, the folder flushed. A failure before the renaming leaves the old file, one
 * after it the new file; no other file stays.
 */
export async function writeWhole(
  path: string,
  content: string | Uint8Array,
  disk: WritingFiles = files,
): Promise<Written> {
  const beside = join(
    dirname(path),
    `.${basename(path).slice(0, 200)}.${pid}-${randomBytes(6).toString("hex")}.saving`,
  );
  try {
    const handle = await disk.open(beside, "wx");
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await disk.rename(beside, path);
    await flushed(disk, dirname(path));
    return { ok: true };
  } catch (failure) {
    await disk.rm(beside, { force: true }).catch(() => undefined);
    return { ok: false, reason: codeOf(failure) };
  }
}

// A save is all or nothing: written beside, flushed, renamed over the old name, the folder flushed, and only then "saved".
import type { FileHandle } from "node:fs/promises";
import * as files from "node:fs/promises";
import { dirname } from "node:path";
import { digest } from "./digest.ts";
import { temporaryPath } from "./temporary-path.ts";

/** The operations of a save, as an argument, so that tests make each one fail. */
export type SavingFiles = Pick<typeof files, "open" | "readFile" | "realpath" | "rename" | "rm" | "stat">;

export type SaveOutcome =
  | { readonly saved: true; readonly digest: string }
  | { readonly saved: false; readonly because: "stale"; readonly theirs: Uint8Array }
  | { readonly saved: false; readonly because: "failed"; readonly error: NodeJS.ErrnoException }
  | { readonly saved: false; readonly because: "held"; readonly holder: number };

/**
 * Replaces a file by new bytes if it still has the digest that the edit was based on. A link stays a link: the file behind it is
 * replaced. The mode of the file is kept. Any failure leaves the old bytes and no temporary.
 */
export async function saveFile(
  path: string,
  bytes: Uint8Array,
  base: string,
  disk: SavingFiles = files,
): Promise<SaveOutcome> {
  let temporary: string | null = null;
  try {
    const real = await disk.realpath(path);
    const before = await disk.readFile(real);
    if (digest(before) !== base) return { saved: false, because: "stale", theirs: before };
    const { mode } = await disk.stat(real);
    temporary = temporaryPath(real);
    await writeWhole(disk, temporary, bytes, mode & 0o777);
    const now = await disk.readFile(real);
    if (digest(now) !== base) {
      await disk.rm(temporary, { force: true });
      return { saved: false, because: "stale", theirs: now };
    }
    await disk.rename(temporary, real);
    temporary = null;
    await flushFolder(disk, dirname(real));
    return { saved: true, digest: digest(bytes) };
  } catch (failure) {
    if (temporary !== null) await disk.rm(temporary, { force: true }).catch(() => undefined);
    return { saved: false, because: "failed", error: failure as NodeJS.ErrnoException };
  }
}

/** Writes all bytes from a place of the file on, or where it stands (null). A short write goes on where it stopped. */
export async function writeAll(handle: FileHandle, bytes: Uint8Array, place: number | null): Promise<void> {
  for (let at = 0; at < bytes.length; ) {
    const { bytesWritten } = await handle.write(bytes, at, bytes.length - at, place === null ? null : place + at);
    if (bytesWritten === 0) throw Object.assign(new Error("nothing was written"), { code: "EIO" });
    at += bytesWritten;
  }
}

/** A new file, flushed. */
export async function writeWhole(
  disk: Pick<SavingFiles, "open">,
  path: string,
  bytes: Uint8Array,
  mode: number,
): Promise<void> {
  const handle = await disk.open(path, "wx", mode);
  try {
    await handle.chmod(mode);
    await writeAll(handle, bytes, null);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Makes sure of the names in a folder. */
export async function flushFolder(disk: Pick<SavingFiles, "open">, folder: string): Promise<void> {
  const handle: FileHandle = await disk.open(folder, "r");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

// Bytes that are about to be cut off or replaced are kept first, whole or not at all.
import type * as files from "node:fs/promises";
import { dirname } from "node:path";
import { flushFolder, writeWhole } from "./save-file.ts";
import { temporaryPath } from "./temporary-path.ts";

export type KeepingFiles = Pick<typeof files, "open" | "rename" | "rm">;

/** Writes bytes under a name beside the others. A name with their digest holds the same bytes already, if it is there. */
export async function keepBeside(disk: KeepingFiles, path: string, bytes: Uint8Array): Promise<void> {
  const temporary = temporaryPath(path);
  try {
    await writeWhole(disk, temporary, bytes, 0o600);
    await disk.rename(temporary, path);
  } catch (failure) {
    await disk.rm(temporary, { force: true }).catch(() => undefined);
    throw failure;
  }
  await flushFolder(disk, dirname(path));
}

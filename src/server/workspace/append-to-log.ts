// Adds lines to a log so that whoever is told "saved" has them: all bytes written, flushed, and the folder that names it flushed.
import { constants } from "node:fs";
import * as files from "node:fs/promises";
import { dirname } from "node:path";
import { digest } from "./digest.ts";
import { type KeepingFiles, keepBeside } from "./keep-beside.ts";
import { flushFolder, writeAll } from "./save-file.ts";

/** Made where it is missing; a link is not followed, for it may lead out of the folder. */
const OWN_FILE = constants.O_RDWR | constants.O_CREAT | (constants.O_NOFOLLOW ?? 0);

/** `known`: bytes of the log as it was read; `whole`: how many of them are whole lines; `day`: names what is cut off. */
export type LogEnd = { readonly known: Uint8Array; readonly whole: number; readonly day: string };

/**
 * Adds whole lines to the log at `path`. A torn tail is first kept beside it and then cut. What cannot be written whole is taken back, as far as the
 * disk lets us: what is left then is a torn tail again. Throws the disk's own error.
 */
export async function appendToLog(
  path: string,
  lines: Uint8Array,
  { known, whole, day }: LogEnd,
  disk: KeepingFiles = files,
): Promise<void> {
  if (known.length > whole) {
    const torn = known.subarray(whole);
    await keepBeside(disk, `${path.replace(/\.jsonl$/, "")}.torn-${day}-${digest(torn).slice(0, 12)}`, torn);
  }
  const handle = await disk.open(path, OWN_FILE, 0o666);
  let done = false;
  try {
    if (known.length > whole) await handle.truncate(whole);
    await writeAll(handle, lines, whole);
    await handle.sync();
    await flushFolder(disk, dirname(path));
    done = true;
  } finally {
    if (!done) await handle.truncate(whole).catch(() => undefined);
    await handle.close().catch(() => undefined);
  }
}

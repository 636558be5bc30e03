import { once } from "node:events";
import type { Writable } from "node:stream";

const LEAST = 64 * 1024;

/** Writes a text piece by piece, no faster than it is read at the other end; stops where nobody reads any more. */
export async function writePieces(pieces: Iterable<string>, stream: Writable): Promise<void> {
  let held = "";
  const gone = new AbortController();
  stream.once("close", () => gone.abort());
  const flush = async () => {
    const open = stream.write(held);
    held = "";
    if (!open && !stream.destroyed) await once(stream, "drain", { signal: gone.signal }).catch(() => {});
  };
  for (const piece of pieces) {
    held += piece;
    if (held.length >= LEAST) await flush();
    if (stream.destroyed) return;
  }
  await flush();
}

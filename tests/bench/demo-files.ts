// The demo notebook and its records, read once.
import { readFileSync } from "node:fs";

const folder = new URL("../../notebooks/", import.meta.url);
const kept = new Map<string, Uint8Array | null>();

/** Bytes of a file of the demo's folder, null when it has none of that name; from memory after the first time. */
export async function readDemoFile(path: string): Promise<Uint8Array | null> {
  if (!kept.has(path)) {
    try {
      kept.set(path, readFileSync(new URL(path, folder)));
    } catch {
      kept.set(path, null);
    }
  }
  return kept.get(path) ?? null;
}

/** Text of the demo notebook. */
export const demoText = (): string => readFileSync(new URL("stiffer-tops.md", folder), "utf8");

/** Tables that were read so far, as text. */
export const tablesRead = (): readonly string[] =>
  [...kept].flatMap(([path, bytes]) => (path.endsWith(".csv") && bytes ? [new TextDecoder().decode(bytes)] : []));

// Which file a name out of a request may mean: one inside the workspace, of a known kind, and never one that hides or points out.
import { constants } from "node:fs";
import type { FileHandle } from "node:fs/promises";
import { open, realpath, stat } from "node:fs/promises";
import { join, sep } from "node:path";

const RESERVED = new Set([
  "con",
  "prn",
  "aux",
  "nul",
  ...Array.from({ length: 9 }, (_, i) => [`com${i + 1}`, `lpt${i + 1}`]).flat(),
]);

/**
 * The name as a path inside the workspace ("records/tops.csv"), or null when it is refused: NUL or other control characters, a
 * backslash, a colon, an empty or absolute part, a part that begins with a dot, a reserved name, an ending not in `endings`.
 */
export function safePath(name: string, endings: readonly string[]): string | null {
  if (name.length === 0 || name.length > 1024 || [...name].some((c) => c < " " || "\\:\u007f".includes(c))) return null;
  const parts = name.split("/");
  if (parts.length > 8) return null;
  for (const part of parts) {
    if (part === "" || part.startsWith(".") || part.length > 255 || /[ .]$/.test(part)) return null;
    if (RESERVED.has((part.split(".")[0] ?? "").toLowerCase())) return null;
  }
  return endings.some((ending) => name.toLowerCase().endsWith(ending)) ? name : null;
}

/** Opens a file for reading, once it is sure that what was opened is a plain file whose real place is inside the folder. Null if not. */
export async function openInside(folder: string, name: string): Promise<FileHandle | null> {
  const path = join(folder, ...name.split("/"));
  let handle: FileHandle;
  try {
    handle = await open(path, constants.O_RDONLY | constants.O_NONBLOCK);
  } catch (failure) {
    if (["ENOENT", "ENOTDIR", "ELOOP", "EISDIR", "ENXIO"].includes((failure as NodeJS.ErrnoException).code ?? ""))
      return null;
    throw failure;
  }
  const real = await realpath(path);
  const [opened, named, home] = [await handle.stat(), await stat(real), await realpath(folder)];
  if (opened.isFile() && opened.ino === named.ino && opened.dev === named.dev && real.startsWith(home + sep))
    return handle;
  await handle.close();
  return null;
}

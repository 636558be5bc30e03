// The machine as commands see it, in Node.
import { constants, readFileSync } from "node:fs";
import { open, readFile } from "node:fs/promises";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { limits } from "../core/base/index.ts";
import type { StaticView, Surface } from "./surface.ts";
import { writeFolder } from "./write-folder.ts";
import { writeWhole } from "./write-whole.ts";

/** Bytes of a file up to the largest limit there is; null when it is not there, or is a folder, a pipe or a device. */
async function read(path: string): Promise<Uint8Array | null> {
  try {
    // Without waiting: to open a pipe that nobody writes to would never end.
    const handle = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const found = await handle.stat();
      return !found.isFile() || found.size > limits.tableBytes.value ? null : await handle.readFile();
    } finally {
      await handle.close();
    }
  } catch {
    return null;
  }
}

/** The surface over this machine; `at` is the address of the running built file. */
export function nodeSurface(at: string): Surface {
  const built = async (name: string): Promise<string | null> =>
    readFile(fileURLToPath(new URL(`../${name}`, at)), "utf8").catch(() => null);
  return {
    version: (JSON.parse(readFileSync(new URL("../../package.json", at), "utf8")) as { readonly version: string })
      .version,
    read,
    write: (path, content) => writeWhole(path, content),
    writeFolder: (path, files) => writeFolder(path, files),
    built,
    stdin: () => createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY }),
    staticView: async () => {
      const place = new URL("./static-view.js", at).href;
      const part = (await import(/* @vite-ignore */ place).catch(() => null)) as {
        readonly staticView?: StaticView;
      } | null;
      return part?.staticView ?? null;
    },
  };
}

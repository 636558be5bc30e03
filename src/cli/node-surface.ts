// The machine as commands see it, in Node.
import { constants, readFileSync } from "node:fs";
import { open, readFile, rename, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { limits } from "../core/base/index.ts";
import type { StaticView, Surface } from "./surface.ts";

const codeOf = (failure: unknown): string =>
  failure instanceof Error && "code" in failure ? String(failure.code) : "unknown";

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

/** Written beside, flushed, renamed over the old name, the folder flushed. A failure leaves the old file and no other. */
async function write(path: string, text: string): ReturnType<Surface["write"]> {
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.saving`);
  try {
    const handle = await open(beside, "wx");
    try {
      await handle.writeFile(text);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(beside, path);
    const folder = await open(dirname(path), "r");
    try {
      await folder.sync();
    } finally {
      await folder.close();
    }
    return { ok: true };
  } catch (failure) {
    await rm(beside, { force: true }).catch(() => undefined);
    return { ok: false, reason: codeOf(failure) };
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
    write,
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

import {
  chmodSync,
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import type { FileHandle } from "node:fs/promises";
import * as files from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { digest } from "../../../src/server/workspace/digest.ts";
import { type SavingFiles, saveFile } from "../../../src/server/workspace/save-file.ts";

const [old, fresh] = ["old text\r\n".repeat(500), "new text\n".repeat(700)].map((text) =>
  new TextEncoder().encode(text),
) as [Uint8Array, Uint8Array];
let folder = "";
let path = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "save-"));
  path = join(folder, "a.md");
  writeFileSync(path, old);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const now = () => new Uint8Array(readFileSync(path));

/** The disk with its n-th operation failing, and a short write of a thousand bytes at a time; counts the operations. */
function failing(n: number, code: string) {
  const count = { done: 0 };
  const tick = () => {
    if (++count.done === n) throw Object.assign(new Error(code), { code });
  };
  const watched = (handle: FileHandle): FileHandle =>
    new Proxy(handle, {
      get: (target, key) => {
        if (key === "close") return () => target.close();
        const value = Reflect.get(target, key) as unknown;
        if (typeof value !== "function") return value;
        return (...given: unknown[]) => {
          tick();
          if (key === "write")
            return target.write(given[0] as Uint8Array, given[1] as number, Math.min(1000, given[2] as number));
          return (value as (...all: unknown[]) => unknown).apply(target, given);
        };
      },
    });
  const disk = Object.fromEntries(
    ["open", "readFile", "realpath", "rename", "rm", "stat"].map((name) => [
      name,
      async (...given: unknown[]) => {
        if (name !== "rm") tick();
        const made = await (files as unknown as Record<string, (...all: unknown[]) => Promise<unknown>>)[name]?.(
          ...given,
        );
        return name === "open" ? watched(made as FileHandle) : made;
      },
    ]),
  ) as unknown as SavingFiles;
  return { disk, count };
}

it("writes the new bytes and says their digest", async () => {
  expect(await saveFile(path, fresh, digest(old))).toEqual({ saved: true, digest: digest(fresh) });
  expect(now()).toEqual(fresh);
  expect(readdirSync(folder)).toEqual(["a.md"]);
});

it("writes nothing when the file is no longer the one the edit was based on, and hands over what is there", async () => {
  expect(await saveFile(path, fresh, digest(fresh))).toMatchObject({
    saved: false,
    because: "stale",
    theirs: Buffer.from(old),
  });
  expect(now()).toEqual(old);
});

it.each(["EIO", "ENOSPC", "EACCES"])(
  "leaves old bytes or new bytes and no temporary, whichever operation fails with %s",
  async (code) => {
    const all = failing(0, code);
    expect((await saveFile(path, fresh, digest(old), all.disk)).saved).toBe(true);
    expect(now()).toEqual(fresh);
    for (let n = 1; n <= all.count.done; n++) {
      writeFileSync(path, old);
      const outcome = await saveFile(path, fresh, digest(old), failing(n, code).disk);
      expect(outcome.saved).toBe(false);
      expect([digest(old), digest(fresh)]).toContain(digest(now()));
      expect(readdirSync(folder)).toEqual(["a.md"]);
    }
    expect(all.count.done).toBeGreaterThan(12);
  },
);

it("keeps the file's mode, and a link stays a link", async () => {
  chmodSync(path, 0o640);
  const link = join(folder, "link.md");
  symlinkSync(path, link);
  expect((await saveFile(link, fresh, digest(old))).saved).toBe(true);
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
  expect(statSync(path).mode & 0o777).toBe(0o640);
  expect(now()).toEqual(fresh);
});

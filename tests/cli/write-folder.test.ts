// A folder is there whole or not at all, whichever operation fails.
import * as files from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { type FolderFiles, writeFolder } from "../../src/cli/write-folder.ts";

const contents = new Map([
  ["a.md", "A"],
  ["records/b.csv", "B"],
]);
let home = "";
beforeEach(async () => {
  home = await files.mkdtemp(join(tmpdir(), "write-folder-"));
});
afterEach(() => files.rm(home, { recursive: true, force: true }));
const tree = async (folder = home): Promise<string[]> => (await files.readdir(folder, { recursive: true })).sort();

it("makes the folder, also where an empty one stands, and folders above it", async () => {
  await files.mkdir(join(home, "empty"));
  for (const place of ["new", "empty", "above/new"]) {
    expect(await writeFolder(join(home, place), contents)).toEqual({ ok: true });
    expect(await files.readFile(join(home, place, "records/b.csv"), "utf8")).toBe("B");
    expect(await tree(join(home, place))).toEqual(["a.md", "records", "records/b.csv"]);
  }
});

it.each(["a folder with a file", "a folder with a hidden file", "a file", "a link to an empty folder"])(
  "leaves alone %s",
  async (what) => {
    const place = join(home, "place");
    if (what === "a file") await files.writeFile(place, "mine");
    else if (what.startsWith("a link")) {
      await files.mkdir(join(home, "elsewhere"));
      await files.symlink(join(home, "elsewhere"), place);
    } else {
      await files.mkdir(place);
      await files.writeFile(join(place, what.includes("hidden") ? ".mine" : "mine"), "mine");
    }
    const before = await tree();
    expect(await writeFolder(place, contents)).toEqual({ ok: false, reason: "taken" });
    expect(await tree()).toEqual(before);
  },
);

/** The real operations, of which the n-th fails. */
function failing(nth: number): { disk: FolderFiles; used: () => number } {
  let count = 0;
  const broken = <T extends (...given: never[]) => Promise<unknown>>(work: T): T =>
    (async (...given: Parameters<T>) => {
      if (++count === nth) throw Object.assign(new Error("broken on purpose"), { code: "EIO" });
      return work(...given);
    }) as unknown as T;
  const { lstat, mkdir, open, readdir, rename, rm } = files;
  const disk = {
    lstat: broken(lstat as never),
    mkdir: broken(mkdir as never),
    open: broken(open as never),
    readdir: broken(readdir as never),
    rename: broken(rename as never),
    rm,
  };
  return { disk: disk as unknown as FolderFiles, used: () => count };
}

it("is whole or not there, and leaves nothing beside, at the failure of any operation", async () => {
  const place = join(home, "place");
  const { used, disk } = failing(0);
  await writeFolder(place, contents, disk);
  await files.rm(place, { recursive: true });
  for (let nth = 1; nth <= used(); nth++) {
    expect(await writeFolder(place, contents, failing(nth).disk)).toEqual({ ok: false, reason: "EIO" });
    // Only the last operation, which flushes the name, comes after the folder has it.
    expect(await tree()).toEqual(nth === used() ? ["place", "place/a.md", "place/records", "place/records/b.csv"] : []);
    await files.rm(place, { recursive: true, force: true });
  }
  expect(used()).toBeGreaterThan(8);
});

it("lets nobody's file be lost that came in between", async () => {
  const place = join(home, "place");
  const disk: FolderFiles = {
    ...files,
    rename: async (from, to) => {
      await files.mkdir(place);
      await files.writeFile(join(place, "mine"), "mine");
      return files.rename(from, to);
    },
  };
  expect(await writeFolder(place, contents, disk)).toEqual({ ok: false, reason: "taken" });
  expect(await tree()).toEqual(["place", "place/mine"]);
});

import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import * as files from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, it } from "vitest";
import { digest } from "../../../src/server/workspace/digest.ts";
import { type FileToTake, type TakingFiles, takeIn } from "../../../src/server/workspace/take-in.ts";

const made: string[] = [];
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
});
const folder = (there: Record<string, string> = {}) => {
  const home = mkdtempSync(join(tmpdir(), "take-in-"));
  made.push(home);
  mkdirSync(join(home, "records"));
  for (const [name, text] of Object.entries(there)) writeFileSync(join(home, name), text);
  return home;
};
const bytes = (text: string) => new TextEncoder().encode(text);
const file = (name: string, text: string, replaces: string | null = null): FileToTake => ({
  name,
  bytes: bytes(text),
  replaces: replaces === null ? null : digest(bytes(replaces)),
});
const listed = (home: string) => readdirSync(join(home, "records")).sort();
const textOf = (home: string, name: string) => readFileSync(join(home, name), "utf8");
const today = "2026-03-14";
const both = [file("records/tops.csv", "new"), file("records/tops.about.json", "{}")];

it("takes in files under names that were free, and makes their folder", async () => {
  const home = folder();
  rmSync(join(home, "records"), { recursive: true });
  expect(await takeIn(home, both, today)).toEqual({ taken: true });
  expect(listed(home)).toEqual(["tops.about.json", "tops.csv"]);
  expect(textOf(home, "records/tops.csv")).toBe("new");
});

it("writes over nothing unasked, and then takes in none of the files", async () => {
  const home = folder({ "records/tops.about.json": "old" });
  expect(await takeIn(home, both, today)).toEqual({ taken: false, because: "exists", file: "records/tops.about.json" });
  expect(listed(home)).toEqual(["tops.about.json"]);
  expect(textOf(home, "records/tops.about.json")).toBe("old");
});

it("keeps what it replaces beside it, under its date and digest", async () => {
  const home = folder({ "records/tops.csv": "old" });
  expect(await takeIn(home, [file("records/tops.csv", "new", "old")], today)).toEqual({ taken: true });
  expect(listed(home)).toEqual([`.tops.csv.2026-03-14.${digest(bytes("old")).slice(0, 12)}.kept`, "tops.csv"]);
  expect(textOf(home, `records/${listed(home)[0]}`)).toBe("old");
});

it("does not replace a file that is no longer what was seen", async () => {
  const home = folder({ "records/tops.csv": "changed meanwhile" });
  expect(await takeIn(home, [file("records/tops.csv", "new", "old")], today)).toMatchObject({ because: "exists" });
  expect(textOf(home, "records/tops.csv")).toBe("changed meanwhile");
});

it("has nothing to do for bytes that are there already", async () => {
  const home = folder({ "records/tops.csv": "new" });
  expect(await takeIn(home, [file("records/tops.csv", "new")], today)).toEqual({ taken: true });
  expect(listed(home)).toEqual(["tops.csv"]);
});

it("takes nothing into a folder that a link puts outside", async () => {
  const [home, elsewhere] = [folder(), folder()];
  rmSync(join(home, "records"), { recursive: true });
  symlinkSync(elsewhere, join(home, "records"));
  expect(await takeIn(home, both, today)).toMatchObject({ taken: false, because: "failed" });
  expect(existsSync(join(elsewhere, "tops.csv"))).toBe(false);
});

/** The real operations, of which the one at a place fails; `count` says how many there were. */
function failing(place: number, code: string) {
  const run = { count: 0 };
  const fail = () => {
    if (run.count++ === place) throw Object.assign(new Error(code), { code });
  };
  const wrap = <T extends (...input: never[]) => Promise<unknown>>(operation: T): T =>
    (async (...input: never[]) => {
      fail();
      return operation(...input);
    }) as unknown as T;
  const disk = {
    ...files,
    readFile: wrap(files.readFile as never),
    realpath: wrap(files.realpath as never),
    mkdir: wrap(files.mkdir as never),
    link: wrap(files.link as never),
    rename: wrap(files.rename as never),
    open: wrap(async (...input: Parameters<typeof files.open>) => {
      const handle = await files.open(...input);
      const { write, sync } = handle;
      handle.write = wrap(write.bind(handle) as never) as never;
      handle.sync = wrap(sync.bind(handle) as never) as never;
      return handle;
    }),
  } as TakingFiles;
  return { disk, run };
}

it.each(["EIO", "ENOSPC"])("leaves both files or neither when any operation fails with %s", async (code) => {
  const setUp = () => folder({ "records/tops.csv": "old" });
  const wanted = [file("records/tops.csv", "new", "old"), file("records/tops.about.json", "{}")];
  const { disk, run } = failing(-1, code);
  expect(await takeIn(setUp(), wanted, today, disk)).toEqual({ taken: true });
  expect(run.count).toBeGreaterThan(12);
  for (let place = 0; place < run.count; place++) {
    const home = setUp();
    const outcome = await takeIn(home, wanted, today, failing(place, code).disk);
    const plain = listed(home).filter((name) => !name.endsWith(".kept"));
    if (outcome.taken) expect(plain).toEqual(["tops.about.json", "tops.csv"]);
    else {
      expect({ place, plain }).toEqual({ place, plain: ["tops.csv"] });
      expect(textOf(home, "records/tops.csv")).toBe("old");
    }
  }
});

it("leaves the table whole and alone where it is stopped between the two names", async () => {
  const home = folder();
  const stopped = new Promise<never>(() => undefined);
  let links = 0;
  const disk = {
    ...files,
    link: async (from: string, to: string) => (links++ === 0 ? files.link(from, to) : stopped),
  } as TakingFiles;
  void takeIn(home, both, today, disk);
  while (links < 2) await new Promise((next) => setImmediate(next));
  expect(listed(home).filter((name) => !name.startsWith("."))).toEqual(["tops.csv"]);
  expect(textOf(home, "records/tops.csv")).toBe("new");
});

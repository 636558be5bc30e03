// Edits on a disk that fails, fills up or loses its program at any one operation: what was acknowledged is there, and the log always reads.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { editLogFromBytes, type RecordEdit } from "../../src/core/records/index.ts";
import { recordsDesk } from "../../src/server/workspace/records-desk.ts";
import { FAULTS, type Fault, faultyFiles } from "./faulty-files.ts";

const TOPS = "top_id;thickness (mm)\r\nT-1;2,4\r\nT-2;2,6";
const WISH = { table: 1, from: 1, count: 100, only: "all" } as const;
let folder = "";
let path = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "edit-faults-"));
  path = join(folder, "tops.csv");
  writeFileSync(path, TOPS);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const deskOn = (disk: ReturnType<typeof faultyFiles>["disk"]) =>
  recordsDesk({
    folder,
    names: async () => ["tops.csv"],
    read: (name) => readFile(join(folder, name)).catch(() => null),
    holder: async () => null,
    changed: () => undefined,
    now: () => new Date("2026-03-14T10:00:00Z"),
    disk,
  });
const sound = () => deskOn(faultyFiles(0, "EIO").disk);
const logBytes = () => new Uint8Array(readFileSync(`${path}.edits.jsonl`));
const beside = (ending: RegExp) => readdirSync(folder).filter((name) => ending.test(name));
let requests = 0;
const request = (base: string, ...edits: readonly RecordEdit[]) => ({ base, id: `request-${requests++}`, edits });

async function shown(desk = sound()) {
  const outcome = await desk.page("tops.csv", WISH);
  if (!outcome.done) throw new Error(outcome.because);
  return outcome.page;
}
/** Every row as it is shown: raw texts, and why it is set aside. */
const rows = async () =>
  (await shown()).rows.map(({ cells, setAside }) =>
    [...cells.map(({ raw }) => raw), ...(setAside ? [setAside] : [])].join(" "),
  );
const add = (name: string): RecordEdit => ({ what: "add", table: 1, cells: [name, "2,2"] });
async function edited(...edits: readonly RecordEdit[]) {
  const outcome = await sound().edit("tops.csv", request((await shown()).digest, ...edits), WISH);
  expect(outcome.done).toBe(true);
}
const both = FAULTS.flatMap((fault) => [false, true].map((torn) => [fault, torn] as const));

/** The folder as it was before each try. */
function startAgain(torn: boolean, log: Uint8Array | null) {
  for (const name of readdirSync(folder)) rmSync(join(folder, name));
  writeFileSync(path, TOPS);
  if (log) writeFileSync(`${path}.edits.jsonl`, torn ? Uint8Array.from([...log, ...Buffer.from('{"v":1,"torn')]) : log);
}

async function tryAt(n: number, fault: Fault, work: (desk: ReturnType<typeof deskOn>) => Promise<{ done: boolean }>) {
  const { disk, begun, killed, release } = faultyFiles(n, fault);
  const said = await Promise.race([work(deskOn(disk)).then(({ done }) => done), killed]);
  await release();
  return { said, begun };
}

it.each(both)(
  "an edit that meets %s is whole or not there, and the next one is taken (torn before: %s)",
  async (fault, torn) => {
    await edited(add("T-3"));
    const log = logBytes();
    const work = async (desk: ReturnType<typeof deskOn>) =>
      desk.edit("tops.csv", request((await shown(desk)).digest, add("T-4")), WISH);
    startAgain(torn, log);
    const { begun } = await tryAt(0, fault, work);
    expect(begun).toContain("sync");
    for (let n = 1; n <= begun.length; n++) {
      startAgain(torn, log);
      const { said } = await tryAt(n, fault, work);
      const where = `${n}: ${begun[n - 1]} -> ${said}`;
      const read = editLogFromBytes(logBytes());
      const known = editLogFromBytes(log).lines;
      expect([where, read.lines.slice(0, 1)]).toEqual([where, known]);
      expect([where, read.problems.filter(({ code }) => code !== "log-torn")]).toEqual([where, []]);
      if (said === true) expect([where, read.lines.length]).toEqual([where, 2]);
      if (said === false) expect([where, await rows()]).toEqual([where, ["T-1 2,4", "T-2 2,6", "T-3 2,2"]]);
      // What was torn before is kept: still at the end of the log, or beside it.
      const kept = [
        ...beside(/torn/).map((name) => readFileSync(join(folder, name), "utf8")),
        Buffer.from(logBytes()).toString(),
      ];
      if (torn) expect([where, kept.some((text) => text.endsWith('{"v":1,"torn'))]).toEqual([where, true]);
      const now = await rows();
      await edited(add("T-5"));
      expect([where, await rows()]).toEqual([where, [...now, "T-5 2,2"]]);
      const apart = beside(/torn/).map((name) => readFileSync(join(folder, name), "utf8"));
      if (torn) expect([where, apart.some((text) => text.endsWith('{"v":1,"torn'))]).toEqual([where, true]);
      expect([where, editLogFromBytes(logBytes()).problems]).toEqual([where, []]);
    }
  },
);

it.each(FAULTS)(
  "writing back that meets %s leaves the same records, and the old file or the new one whole",
  async (fault) => {
    await edited(add("T-3"), { what: "set-aside", table: 1, row: 1, reason: "warped" });
    const log = logBytes();
    const expected = ["T-1 2,4 warped", "T-2 2,6", "T-3 2,2"];
    const work = async (desk: ReturnType<typeof deskOn>) =>
      desk.write("tops.csv", { base: (await shown(desk)).digest, id: `write-${requests++}` }, WISH);
    const { begun } = await tryAt(0, fault, work);
    expect([readFileSync(path, "utf8"), await rows()]).toEqual([`${TOPS}\r\nT-3;2,2`, expected]);
    for (let n = 1; n <= begun.length; n++) {
      startAgain(false, log);
      const { said } = await tryAt(n, fault, work);
      const where = `${n}: ${begun[n - 1]} -> ${said}`;
      const now = readFileSync(path, "utf8");
      expect([where, [TOPS, `${TOPS}\r\nT-3;2,2`].includes(now)]).toEqual([where, true]);
      if (said === true) expect([where, now]).not.toEqual([where, TOPS]);
      expect([where, await rows()]).toEqual([where, expected]);
      expect([where, (await shown()).problems.filter(({ code }) => code !== "log-torn")]).toEqual([where, []]);
      if (now !== TOPS)
        expect([where, readFileSync(join(folder, beside(/\.kept$/)[0] ?? ""), "utf8")]).toEqual([where, TOPS]);
      // It goes on from there.
      await edited(add("T-4"));
      await edited({ what: "bring-back", table: 1, row: 1 });
      const again = await sound().write("tops.csv", { base: (await shown()).digest, id: `write-${requests++}` }, WISH);
      expect([where, again.done]).toEqual([where, true]);
      expect([where, readFileSync(path, "utf8")]).toEqual([where, `${TOPS}\r\nT-3;2,2\r\nT-4;2,2`]);
      const kept = beside(/\.kept$/).map((name) => readFileSync(join(folder, name), "utf8"));
      expect([where, kept]).toEqual([where, expect.arrayContaining([TOPS])]);
    }
  },
);

it("does not say that an edit is saved while a flush has not returned", async () => {
  const work = async (desk: ReturnType<typeof deskOn>) =>
    desk.edit("tops.csv", request((await shown(desk)).digest, add("T-3")), WISH);
  const { begun } = await tryAt(0, "EIO", work);
  const flushes = begun.flatMap((name, at) => (name === "sync" ? [at + 1] : []));
  expect(flushes).toHaveLength(2);
  for (const n of flushes) {
    startAgain(false, null);
    expect((await tryAt(n, "killed before", work)).said).toBe("killed");
  }
});

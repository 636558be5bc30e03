import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { folderLock } from "../../../src/server/workspace/folder-lock.ts";

let folder = "";
let path = "";
let other: ChildProcess;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lock-"));
  path = join(folder, ".thumbrule.lock");
  other = spawn(process.execPath, ["-e", "setTimeout(() => undefined, 60000)"], { stdio: "ignore" });
});
afterEach(() => {
  other.kill("SIGKILL");
  rmSync(folder, { recursive: true });
});
const gone = (child: ChildProcess) => new Promise((done) => child.once("exit", done));
/** The time a process began, as the system writes it: field 22 of its line (proc(5)). */
const began = (pid: number) => readFileSync(`/proc/${pid}/stat`, "utf8").split(" ")[21] ?? null;
const heldBy = (pid: number, since: string | null) =>
  writeFileSync(path, JSON.stringify({ pid, began: since, claim: "theirs" }));

it("holds a folder that nobody holds, alone, until it is released", async () => {
  const first = folderLock(folder);
  expect(await first.holder()).toBeNull();
  const second = folderLock(folder);
  expect(await second.holder()).toBe(process.pid);
  await first.release();
  expect(await second.holder()).toBeNull();
  await second.release();
  expect(readdirSync(folder)).toEqual([]);
});

it("leaves a folder to a running process, and takes it over when that is gone", async () => {
  heldBy(other.pid ?? 0, began(other.pid ?? 0));
  const lock = folderLock(folder);
  expect(await lock.holder()).toBe(other.pid);
  await lock.release();
  expect(existsSync(path)).toBe(true);
  const exit = gone(other);
  other.kill("SIGKILL");
  await exit;
  expect(await lock.holder()).toBeNull();
});

it("is not taken in by another process of the same number", async () => {
  heldBy(other.pid ?? 0, "1");
  expect(await folderLock(folder).holder()).toBeNull();
});

it("takes over a lock that cannot be understood", async () => {
  for (const text of ["", "{", "null", '{"pid":"x","claim":"y"}']) {
    writeFileSync(path, text);
    const lock = folderLock(folder);
    expect([text, await lock.holder()]).toEqual([text, null]);
    await lock.release();
  }
});

it("goes to one of many that find a dead holder at the same time", async () => {
  for (let round = 0; round < 20; round++) {
    heldBy(other.pid ?? 0, "1");
    const locks = Array.from({ length: 8 }, () => folderLock(folder));
    await Promise.all(locks.map((lock) => lock.holder()));
    const holders = await Promise.all(locks.map((lock) => lock.holder()));
    expect(holders.filter((holder) => holder === null)).toHaveLength(1);
    await Promise.all(locks.map((lock) => lock.release()));
    expect(readdirSync(folder)).toEqual([]);
  }
});

it("is needed by nobody in a folder that cannot be written to", async () => {
  expect(await folderLock(join(folder, "missing")).holder()).toBeNull();
});

import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import * as files from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { writeWhole } from "../../../src/cli/write-whole.ts";
import { keptName, removeLeftovers } from "../../../src/server/workspace/remove-leftovers.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "leftovers-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** No process has this number: it is over the most that a system gives. */
const NOBODY = 2 ** 22 + 1;
const NOW = Date.parse("2026-03-14T12:00:00Z");

it("removes what a dead process left and what was kept long enough, says so, and touches nothing else", async () => {
  const stays = [
    "tops.csv",
    ".tops.csv.saving",
    ".tops.csv.0123456789ab.saving",
    `.tops.csv.${process.pid}-0123456789ab.saving`,
    `tops.csv.${NOBODY}-0123456789ab.saving`,
    keptName("tops.csv", "2026-02-13", "f".repeat(64)),
    ".tops.csv.2026-01-01.kept",
  ];
  const goes = [`.tops.csv.${NOBODY}-0123456789ab.saving`, keptName("tops.csv", "2026-02-11", "f".repeat(64))];
  for (const name of [...stays, ...goes]) writeFileSync(join(folder, name), "x");
  mkdirSync(join(folder, `.folder.${NOBODY}-0123456789ab.saving`));
  const said: string[] = [];
  await removeLeftovers([folder, join(folder, "none")], NOW, (line) => said.push(line));
  expect(readdirSync(folder).sort()).toEqual([...stays, `.folder.${NOBODY}-0123456789ab.saving`].sort());
  expect(said.map((line) => goes.findIndex((name) => line.includes(name))).sort()).toEqual([0, 1]);
});

it("knows what the command line left when it was stopped while it wrote", async () => {
  const names: string[] = [];
  const open = (async (path: string, flags: string) => {
    names.push(String(path));
    return files.open(path, flags);
  }) as typeof files.open;
  const stopped = () => Promise.reject(new Error("stopped"));
  await writeWhole(join(folder, "copy.html"), "x", { ...files, open, rename: stopped, rm: stopped });
  const [left = ""] = readdirSync(folder);
  expect(names[0]?.endsWith(left)).toBe(true);
  // As it would be named by a process that is gone.
  writeFileSync(join(folder, left.replace(String(process.pid), String(NOBODY))), "x");
  await removeLeftovers([folder], NOW, () => undefined);
  expect(readdirSync(folder)).toEqual([left]);
});

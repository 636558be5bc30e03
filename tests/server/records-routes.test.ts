// The record routes over a real folder: what the grid asks, and what lies on the disk afterwards.
import { spawn } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { crc32 } from "node:zlib";
import { afterEach, beforeEach, expect, it } from "vitest";
import type { RecordEdit, RecordsPage } from "../../src/core/records/index.ts";
import { createApp } from "../../src/server/create-app.ts";
import { openWorkspace } from "../../src/server/workspace/open-workspace.ts";
import type { Workspace } from "../../src/server/workspace/workspace.ts";

const PORT = 4321;
const secrets = { token: "t".repeat(43), cookie: "c".repeat(43) };
const TOPS = "top_id;thickness (mm);note\r\nT-1;2,4;\r\nT-2;2,6;thick\r\nT-3;3/32;";
const ADDRESS = "/api/records/records%2Ftops.csv";
let folder = "";
let path = "";
let shop: Workspace;
const opened = () =>
  openWorkspace(folder, {
    version: "0.0.0",
    watch: false,
    draw: () => ({ tag: "svg", attributes: [], children: [] }),
    share: async () => ({ name: "a.html", html: "" }),
  });
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "records-"));
  mkdirSync(join(folder, "records"));
  path = join(folder, "records", "tops.csv");
  writeFileSync(path, TOPS);
  writeFileSync(join(folder, "tops.md"), "```records tops\nfrom records/tops.csv\n```\n");
  shop = opened();
});
afterEach(async () => {
  await shop.close();
  rmSync(folder, { recursive: true });
});

async function ask(address: string, body?: unknown): Promise<{ status: number; said: unknown }> {
  const app = createApp({
    workspace: shop,
    files: new Map(),
    port: PORT,
    secrets,
    log: (_, failure) => {
      throw failure;
    },
    faultId: () => "f",
  });
  const headers = { host: `127.0.0.1:${PORT}`, cookie: `thumbrule-${PORT}=${secrets.cookie}` };
  const answer = await app.fetch(
    new Request(
      `http://127.0.0.1:${PORT}${address}`,
      body === undefined
        ? { headers }
        : { method: "POST", body: JSON.stringify(body), headers: { ...headers, "content-type": "application/json" } },
    ),
  );
  return { status: answer.status, said: await answer.json() };
}
const page = async (query = "") => (await ask(ADDRESS + query)).said as RecordsPage;
let requests = 0;
async function edit(...edits: readonly RecordEdit[]) {
  const { digest } = await page();
  return ask(`${ADDRESS}/edits`, { base: digest, id: `request-${requests++}`, edits });
}
const edited = async (...edits: readonly RecordEdit[]) => {
  const { status, said } = await edit(...edits);
  expect([status, said]).toMatchObject([200, {}]);
  return said as RecordsPage;
};
const beside = () => readdirSync(join(folder, "records")).sort();
const cell = (row: number, col: number, before: string, after: string) =>
  ({ what: "cell", table: 1, row, col, before, after }) as const;

it("lists the record files of the folder with their tables and rows", async () => {
  writeFileSync(join(folder, "two.csv"), "a,b\nx,1\n\ncolour,grade,note\nred,3,x\n");
  writeFileSync(join(folder, ".hidden.csv"), "a,b\nx,1\n");
  expect((await ask("/api/records")).said).toEqual({
    tables: [
      { file: "records/tops.csv", tables: 1, rows: 3 },
      { file: "two.csv", tables: 2, rows: 2 },
    ],
  });
});

it("shows each cell's raw text beside its reading, with its warning in words", async () => {
  const { rows, columns, editable, rowCount, warnings, ...rest } = await page();
  expect(columns.map(({ name, unit, kind, warnings: count }) => [name, unit, kind, count])).toEqual([
    ["top_id", null, "text", 0],
    ["thickness", "mm", "quantity", 1],
    ["note", null, "text", 0],
  ]);
  expect(rows[0]?.cells[1]).toEqual({ raw: "2,4", reading: "2.4 mm" });
  expect(rows[2]?.cells[1]).toMatchObject({ raw: "3/32", warning: { code: "fraction-without-inch" } });
  expect(rows[2]?.cells[1]?.warning?.sentence).toMatch(/inch/);
  expect(warnings).toMatchObject([{ row: 3, col: 2, code: "fraction-without-inch" }]);
  expect([editable, rowCount]).toEqual([true, 3]);
  expect(rest).toMatchObject({ file: "records/tops.csv", canUndo: false, canRedo: false, edits: 0, problems: [] });
});

it("gives the rows asked for, the warned ones alone on wish", async () => {
  const numbers = async (query: string) => {
    const { rows, matching } = await page(query);
    return [matching, ...rows.map(({ row }) => row)];
  };
  expect(await numbers("?from=2&count=1")).toEqual([3, 2]);
  expect(await numbers("?from=9")).toEqual([3]);
  expect(await numbers("?only=warned")).toEqual([1, 3]);
  expect(await numbers("?table=2")).toEqual([0]);
  for (const wrong of ["?from=0", "?count=1001", "?only=some", "?table=-1", "?from=x"])
    expect((await ask(ADDRESS + wrong)).status).toBe(422);
});

it.each(["..%2Fa.csv", "tops.md", "records%2Ftops.csv.edits.jsonl", "records%2F.tops.csv", "%00.csv"])(
  "opens no other file: %s",
  async (name) => {
    writeFileSync(`${path}.edits.jsonl`, "secret\n");
    expect((await ask(`/api/records/${name}`)).status).toBe(404);
    expect((await ask(`/api/table/${name}`)).status).toBe(404);
  },
);

it("keeps an edit in the log beside the file, which stays as it is; another start shows the same", async () => {
  const now = await edited(cell(1, 2, "2,4", "2,45"), { what: "set-aside", table: 1, row: 2, reason: "warped" });
  expect(now.rows[0]?.cells[1]).toEqual({ raw: "2,45", reading: "2.45 mm", before: "2,4" });
  expect(now.rows[1]?.setAside).toBe("warped");
  expect(readFileSync(path, "utf8")).toBe(TOPS);
  expect(readFileSync(`${path}.edits.jsonl`, "utf8").trim().split("\n")).toHaveLength(2);
  await shop.close();
  shop = opened();
  expect(await page()).toEqual(now);
});

it("undoes and does again, after another start too", async () => {
  const first = await page();
  await edited(cell(1, 2, "2,4", "2,45"));
  const last = await edited({ what: "add", table: 1, cells: ["T-4", "2,2"] });
  await edited({ what: "undo" });
  await shop.close();
  shop = opened();
  const undone = await edited({ what: "undo" });
  expect(undone.rows).toEqual(first.rows);
  expect([undone.canUndo, undone.canRedo]).toEqual([false, true]);
  await edited({ what: "redo" });
  expect((await edited({ what: "redo" })).rows).toEqual(last.rows);
});

it("does the work of a request once, however often it comes", async () => {
  const { digest } = await page();
  const request = { base: digest, id: "the-same-one", edits: [{ what: "add", table: 1, cells: ["T-4", "2,2"] }] };
  const answers = await Promise.all([1, 2, 3].map(() => ask(`${ADDRESS}/edits`, request)));
  expect(answers.map(({ status }) => status)).toEqual([200, 200, 200]);
  expect((await page()).rowCount).toBe(4);
});

it("makes one of two edits of the same state, and tells the other what there is now", async () => {
  const { digest } = await page();
  const answers = await Promise.all(
    ["2,1", "2,2"].map((after, n) =>
      ask(`${ADDRESS}/edits`, { base: digest, id: `other-tab-${n}`, edits: [cell(1, 2, "2,4", after)] }),
    ),
  );
  expect(answers.map(({ status }) => status)).toEqual([200, 409]);
  expect(answers[1]?.said).toMatchObject({ problems: [{ code: "stale-edit" }], theirs: (await page()).digest });
  expect((await page()).rows[0]?.cells[1]?.raw).toBe("2,1");
});

it("makes none of several edits when one is refused", async () => {
  const { status, said } = await edit(cell(1, 2, "2,4", "2,5"), cell(2, 2, "other", "2,5"));
  expect([status, said]).toMatchObject([409, { problems: [{ code: "edit-stale" }] }]);
  expect((await edit(cell(9, 2, "2,4", "2,5"))).status).toBe(422);
  expect(beside()).toEqual(["tops.csv"]);
});

it.each([
  { what: "cell", table: 1, row: 1, col: 2, before: "2,4" },
  { what: "cell", table: 1, row: 0, col: 2, before: "2,4", after: "3" },
  { what: "cell", table: 1, row: 1, col: 2, before: "2,4", after: "\ud800" },
  { what: "undo", more: 1 },
  { what: "constructor" },
  "undo",
  null,
])("refuses what is no edit: %j", async (wrong) => {
  const { digest } = await page();
  const { status } = await ask(`${ADDRESS}/edits`, { base: digest, id: "request-x", edits: [wrong] });
  expect(status).toBe(422);
});

it("writes the edits into the file, keeps what it held, and goes on setting rows aside", async () => {
  await edited({ what: "set-aside", table: 1, row: 1, reason: "warped" });
  await edited(cell(1, 2, "2,4", "2,45"));
  const { digest } = await edited({ what: "add", table: 1, cells: ["T-4", "2,2"] });
  const { status, said } = await ask(`${ADDRESS}/write`, { base: digest });
  expect(status).toBe(200);
  expect(readFileSync(path, "utf8")).toBe(`${TOPS.replace("2,4;", "2,45;")}\r\nT-4;2,2;`);
  expect(said).toMatchObject({ edits: 0, canUndo: false, rowCount: 4, problems: [] });
  expect((said as RecordsPage).rows[0]).toMatchObject({ setAside: "warped", cells: [{}, { raw: "2,45" }, {}] });
  expect((said as RecordsPage).rows[0]?.cells[1]?.before).toBeUndefined();
  const kept = beside().find((name) => name.endsWith(".kept")) ?? "";
  expect(kept).toMatch(/^\.tops\.csv\.\d{4}-\d\d-\d\d\.[0-9a-f]{12}\.kept$/);
  expect(readFileSync(join(folder, "records", kept), "utf8")).toBe(TOPS);
  expect((await ask(`/api/table/records%2F${kept}`)).status).toBe(404);
  expect((await edited(cell(2, 2, "2,6", "2,7"))).rows.map(({ cells }) => cells[1]?.raw)).toEqual([
    "2,45",
    "2,7",
    "3/32",
    "2,2",
  ]);
  expect((await ask(`${ADDRESS}/write`, { base: digest })).status).toBe(409);
});

it("finds its edits again after something else has changed the file, and lists what it cannot place", async () => {
  await edited(cell(2, 2, "2,6", "2,7"), cell(1, 3, "", "old"));
  writeFileSync(path, TOPS.replace("T-1;2,4", "T-1;2,9").replace("T-2", "T-0;1,9;\r\nT-2"));
  const now = await page();
  expect(now.rows.map(({ cells }) => cells.map(({ raw }) => raw).join())).toEqual([
    "T-1,2,9,",
    "T-0,1,9,",
    "T-2,2,7,thick",
    "T-3,3/32,",
  ]);
  expect(now.problems).toMatchObject([{ code: "edit-record-gone" }]);
  await ask(`${ADDRESS}/write`, { base: now.digest });
  expect((await page()).problems).toMatchObject([{ code: "edit-record-gone" }]);
});

it("computes the notebook with the edits at once", async () => {
  await shop.compute("tops.md", readFileSync(join(folder, "tops.md"), "utf8"), new Map());
  await edited(cell(1, 2, "2,4", "2,45"), { what: "set-aside", table: 1, row: 2, reason: "warped" });
  const { result } = await shop.compute("tops.md", readFileSync(join(folder, "tops.md"), "utf8"), new Map());
  const view = result.entries[0]?.view;
  expect(view?.kind === "table" && view.rows.map(({ setAside, cells }) => [cells[1]?.raw, setAside])).toEqual([
    ["2,45", undefined],
    ["2,6", "warped"],
    ["3/32", undefined],
  ]);
});

it("reads by the description beside the file, as the notebook does", async () => {
  const about = { columns: { note: { kind: "yes-no" } }, missingValues: ["T-2"] };
  writeFileSync(join(folder, "records", "tops.about.json"), JSON.stringify(about));
  const { columns, rows } = await page();
  expect(columns[2]?.kind).toBe("yes-no");
  expect(rows[1]?.cells[0]).toMatchObject({ raw: "T-2", reading: "nothing measured" });
});

it("only reads in a folder that another running process holds, and says which", async () => {
  await shop.close();
  const other = spawn(process.execPath, ["-e", "setTimeout(() => undefined, 60000)"], { stdio: "ignore" });
  const lock = join(folder, ".thumbrule.lock");
  writeFileSync(lock, JSON.stringify({ pid: other.pid, began: null, claim: "theirs" }));
  shop = opened();
  const { digest, editable, canSetAside, problems } = await page();
  expect([editable, canSetAside]).toEqual([false, false]);
  expect(problems[0]?.sentence).toContain(String(other.pid));
  const refused = { status: 423, said: { problems: [{ code: "folder-held" }] } };
  expect(await edit(cell(1, 2, "2,4", "2,5"))).toMatchObject(refused);
  expect(await ask(`${ADDRESS}/write`, { base: digest })).toMatchObject(refused);
  expect(await shop.save("tops.md", new Uint8Array(), "")).toMatchObject({ saved: false, because: "held" });
  expect(beside()).toEqual(["tops.csv"]);
  other.kill("SIGKILL");
  await new Promise((gone) => other.once("exit", gone));
  expect((await edit(cell(1, 2, "2,4", "2,5"))).status).toBe(200);
});

it("sets rows of a workbook aside, and says how to edit its cells", async () => {
  const sheet = "/api/records/records%2Fsheet.xlsx";
  copyFileSync("tests/messy/files/d_sheet_plain.xlsx", join(folder, "records", "sheet.xlsx"));
  const before = (await ask(sheet)).said as RecordsPage;
  expect([before.editable, before.canSetAside]).toEqual([false, true]);
  const send = (id: string, base: string, ...edits: RecordEdit[]) => ask(`${sheet}/edits`, { base, id, edits });
  const raw = before.rows[0]?.cells[0]?.raw ?? "";
  expect(await send("sheet-edit", before.digest, cell(1, 1, raw, "x"))).toMatchObject({
    status: 422,
    said: { problems: [{ code: "edit-in-workbook", sentence: expect.stringContaining("CSV") }] },
  });
  const aside = { what: "set-aside", table: 1, row: 2, reason: "warped" } as const;
  const after = (await send("sheet-aside", before.digest, aside)).said as RecordsPage;
  expect(after.rows.map(({ setAside }) => setAside)).toEqual([undefined, "warped"]);
  const back = (await send("sheet-back", after.digest, { what: "undo" })).said as RecordsPage;
  expect(back.rows).toEqual(before.rows);
});

it("cuts a torn tail of the log, keeps it beside, and says so; a later version's log is only read", async () => {
  await edited(cell(1, 2, "2,4", "2,5"));
  const log = `${path}.edits.jsonl`;
  const whole = readFileSync(log, "utf8");
  writeFileSync(log, `${whole}{"v":1,"seq":2`);
  expect((await page()).problems).toMatchObject([{ code: "log-torn", line: 2 }]);
  expect((await edited(cell(2, 2, "2,6", "2,7"))).problems).toEqual([]);
  const torn = beside().find((name) => name.includes(".edits.torn-")) ?? "";
  expect(torn).toMatch(/^tops\.csv\.edits\.torn-\d{4}-\d\d-\d\d-[0-9a-f]{12}$/);
  expect(readFileSync(join(folder, "records", torn), "utf8")).toBe('{"v":1,"seq":2');
  expect((await ask(`/api/table/records%2F${torn}`)).status).toBe(404);
  // CRC-32 of '{"v":2,"seq":9}' by zlib.
  writeFileSync(log, `${whole}{"v":2,"seq":9,"sum":"${crc32('{"v":2,"seq":9}').toString(16).padStart(8, "0")}"}\n`);
  const { editable, problems, rows } = await page();
  expect([editable, problems[0]?.code, rows[0]?.cells[1]?.raw]).toEqual([false, "log-newer", "2,5"]);
  expect(await edit(cell(2, 2, "2,6", "2,7"))).toMatchObject({
    status: 422,
    said: { problems: [{ code: "log-newer" }] },
  });
});

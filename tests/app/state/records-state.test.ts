import { expect, it } from "vitest";
import { recordsState } from "../../../src/app/state/records-state.ts";
import { sampleRecords } from "../../support/sample-records.ts";

async function opened(count = 30, at?: { readonly row: number; readonly col: number }) {
  const sample = sampleRecords(count);
  let ids = 0;
  const state = recordsState(sample.api, () => `edit-${++ids}`);
  await state.open({ file: "records/tops.csv", table: 1, ...at });
  return { ...sample, state };
}

it("reads pages of 200 rows around what is looked at, each once", async () => {
  const { state, server } = await opened(100_000);
  expect(server.asked).toEqual(["records/tops.csv all 1"]);
  await state.look(50_150, 50_230);
  await state.look(50_150, 50_230);
  expect(server.asked.slice(1)).toEqual(["records/tops.csv all 50001", "records/tops.csv all 50201"]);
  expect(state.rowAt(50_200)?.row).toBe(50_201);
  expect(state.rowAt(70_000)).toBeUndefined();
});

it("reads for where a long scroll ends, not for all it passes", async () => {
  const { state, server } = await opened(100_000);
  const all = Array.from({ length: 300 }, (_, at) => state.look(at * 300, at * 300 + 40));
  await Promise.all(all);
  expect(server.asked.length).toBeLessThanOrEqual(5);
  expect(state.rowAt(299 * 300)?.row).toBe(299 * 300 + 1);
});

it("keeps no more rows than are near", async () => {
  const { state } = await opened(10_000);
  for (let at = 0; at < 10_000; at += 200) await state.look(at, at + 50);
  expect(state.rowAt(0)).toBeUndefined();
  expect(state.rowAt(9_800)).toBeDefined();
});

it("saves a cell with what it held before, and says what it is read as now", async () => {
  const { state, rows } = await opened(30, { row: 3, col: 2 });
  state.begin();
  expect(state.draft.value).toMatchObject({ what: "cell", row: 3, col: 2, text: "2.3.1" });
  state.write("2.31");
  expect(state.unsaved.value).toBe(true);
  const called = state.called.value;
  expect(await state.save()).toBe(true);
  expect(rows()[2]?.cells[1]).toBe("2.31");
  expect(state.message.value).toBe("Saved: Thickness of row 3 is read as 2.31 mm.");
  expect(state.rowAt(2)?.cells[1]).toMatchObject({ reading: "2.31 mm", before: "2.3.1" });
  expect(state.called.value).toBeGreaterThan(called);
  expect([state.draft.value, state.unsaved.value]).toEqual([null, false]);
});

it("leaves a cell as it was, and sends nothing for one that was not changed", async () => {
  const { state, server } = await opened(30, { row: 3, col: 2 });
  state.begin();
  state.write("9");
  state.leave();
  state.begin();
  expect(await state.save()).toBe(true);
  expect(server.ids).toEqual([]);
  expect(state.draft.value).toBeNull();
});

it("keeps what was typed when the table is another by now, shows what it holds, and saves over that only then", async () => {
  const { state, rows, another } = await opened(30, { row: 3, col: 2 });
  state.begin();
  state.write("2.31");
  another(3, 2, "2.4");
  expect(await state.save()).toBe(false);
  expect(state.stale.value).toBe(true);
  expect(state.faults.value).toEqual(["The table was changed by something else."]);
  expect(state.draft.value?.text).toBe("2.31");
  expect(rows()[2]?.cells[1]).toBe("2.4");
  await state.readAgain();
  expect(state.draft.value).toMatchObject({ begun: "2.4", text: "2.31" });
  expect(state.stale.value).toBe(false);
  expect(await state.save()).toBe(true);
  expect(rows()[2]?.cells[1]).toBe("2.31");
});

it("does not take a change from outside for what a draft was begun on", async () => {
  const { state, rows, another } = await opened(30, { row: 3, col: 2 });
  state.begin();
  state.write("2.31");
  another(3, 2, "2.4");
  await state.changedOutside("records/tops.csv");
  expect(state.draft.value?.text).toBe("2.31");
  expect(await state.save()).toBe(false);
  expect(rows()[2]?.cells[1]).toBe("2.4");
});

it("sends an edit again under the same id, and another edit under its own", async () => {
  const { state, server } = await opened(30, { row: 3, col: 2 });
  state.begin();
  state.write("2.31");
  server.away = true;
  expect(await state.save()).toBe(false);
  expect(state.faults.value).toEqual(["The program does not answer."]);
  expect(await state.save()).toBe(false);
  server.away = false;
  expect(await state.save()).toBe(true);
  await state.undo();
  expect(server.ids).toEqual(["edit-1", "edit-1", "edit-1", "edit-2"]);
});

it("sets a row aside only with a reason, and brings it back", async () => {
  const { state, rows } = await opened(30, { row: 5, col: 0 });
  state.begin();
  expect(await state.save()).toBe(false);
  expect(state.faults.value).toEqual(["Say why, in a few words: the reason stays with the row."]);
  state.write(" cracked ");
  expect(await state.save()).toBe(true);
  expect(rows()[4]?.setAside).toBe("cracked");
  expect(await state.bringBack()).toBe(true);
  expect(rows()[4]?.setAside).toBeUndefined();
  expect(state.message.value).toBe("Row 5 takes part again.");
});

it("adds a record and goes to it; undoes and does again", async () => {
  const { state, rows } = await opened();
  expect(await state.add(["T-99", "2.5", ""])).toBe(true);
  expect(state.place.value).toEqual({ position: 30, col: 1 });
  expect(state.rowAt(30)).toMatchObject({ row: 31, added: true });
  await state.undo();
  expect(rows()).toHaveLength(30);
  expect(state.place.value.position).toBe(29);
  expect([state.canUndo.value, state.canRedo.value]).toEqual([false, true]);
  await state.redo();
  expect(rows()).toHaveLength(31);
});

it("shows only the rows with warnings, and stays inside them when one is mended", async () => {
  const { state } = await opened();
  await state.show("warned");
  expect(state.head.value?.matching).toBe(1);
  expect(state.message.value).toBe("1 row with warnings.");
  await state.go({ position: 0, col: 2 });
  state.begin();
  state.write("2.31");
  await state.save();
  expect(state.head.value?.matching).toBe(0);
  expect(state.place.value.position).toBe(0);
  await state.goToRow(12, 1);
  expect(state.only.value).toBe("all");
  expect(state.rowAt(state.place.value.position)?.row).toBe(12);
});

it("saves what was written before it goes elsewhere, and goes nowhere when that fails", async () => {
  const { state, server, rows } = await opened(30, { row: 3, col: 2 });
  state.begin();
  state.write("2.31");
  server.away = true;
  await state.go({ position: 7, col: 1 });
  await state.open(null);
  expect([state.place.value, state.file.value]).toEqual([{ position: 2, col: 2 }, "records/tops.csv"]);
  server.away = false;
  await state.go({ position: 700, col: 9 });
  expect(rows()[2]?.cells[1]).toBe("2.31");
  expect(state.place.value).toEqual({ position: 29, col: 3 });
});

it("asks nothing more once the table is closed", async () => {
  const { state, server } = await opened(1000);
  const reading = state.look(400, 440);
  await state.open(null);
  await Promise.all([reading, state.look(0, 40), state.changedOutside("records/tops.csv")]);
  expect(server.asked).toEqual(["records/tops.csv all 1", "records/tops.csv all 401"]);
  expect(state.head.value).toBeNull();
});

it("opens a table by its name, and stays in it for a row of it", async () => {
  const { state, server } = await opened();
  await state.open({ file: "records/tops.csv", table: 1, named: "offcuts", row: 4, col: 2 });
  expect(state.head.value?.table).toBe(2);
  expect(state.place.value).toEqual({ position: 3, col: 2 });
  const asked = server.asked.length;
  await state.open({ file: "records/tops.csv", table: 2, row: 5 });
  expect(server.asked.length).toBe(asked);
  await state.open({ file: "records/tops.csv", table: 1, named: "no such table" });
  expect(state.head.value?.table).toBe(1);
});

it("goes where it was sent while a cell was being saved, once it is", async () => {
  const { state, rows, server } = await opened(30, { row: 3, col: 2 });
  state.begin();
  state.write("2.31");
  await Promise.all([state.save(), state.go({ position: 7, col: 1 }), state.show("warned")]);
  expect(server.ids).toHaveLength(1);
  expect(rows()[2]?.cells[1]).toBe("2.31");
  expect(state.only.value).toBe("warned");
});

it("shows the table that was opened last, whichever answer comes last", async () => {
  const sample = sampleRecords();
  const waiting: (() => void)[] = [];
  const page = sample.api.page;
  const state = recordsState(
    { ...sample.api, page: (file, wish) => new Promise((done) => waiting.push(() => done(page(file, wish)))) },
    () => "1",
  );
  const first = state.open({ file: "records/tops.csv", table: 1 });
  await Promise.resolve();
  const second = state.open({ file: "records/other.csv", table: 1 });
  await new Promise((done) => setTimeout(done, 0));
  waiting[0]?.();
  await new Promise((done) => setTimeout(done, 0));
  expect(state.head.value).toBeNull();
  waiting[1]?.();
  await Promise.all([first, second]);
  expect(sample.server.asked.at(-1)).toBe("records/other.csv all 1");
});

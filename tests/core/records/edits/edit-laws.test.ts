// What holds for every table and every sequence of edits: the log replays to the same bytes, and only what was edited differs.
import fc from "fast-check";
import { expect } from "vitest";
import { editLogFromBytes } from "../../../../src/core/records/edits/edit-log-from-bytes.ts";
import { encodedText } from "../../../../src/core/records/edits/encoded-text.ts";
import type { RecordEdit } from "../../../../src/core/records/index.ts";
import { type EditSession, edited, editedWell, openedSession } from "../../../support/edit-session.ts";
import { law } from "../../../support/law.ts";
import { rowsOf } from "../../../support/rows-of.ts";

const MARKS = {
  "utf-8": [],
  "utf-8 with mark": [0xef, 0xbb, 0xbf],
  "utf-16le": [0xff, 0xfe],
  "utf-16be": [0xfe, 0xff],
  "windows-1252": [],
};
const cellText = fc.oneof(
  fc.constantFrom(
    "",
    "2,4",
    '3/32"',
    'say "ash"',
    "a;b",
    "x\ny",
    "  spaced ",
    "ö",
    "Größe €",
    "=1+1",
    "'",
    "total",
    "# no",
    "-",
  ),
  fc.string({ unit: fc.constantFrom(...'ab 1.,;\t|"\n'), maxLength: 6 }),
);
type File = { readonly bytes: Uint8Array; readonly delimiter: string };

/** A table of three columns as some program wrote it: its encoding, delimiter, line ends, quotes and spaces. */
const file: fc.Arbitrary<File> = fc
  .record({
    encoding: fc.constantFrom(...(Object.keys(MARKS) as (keyof typeof MARKS)[])),
    delimiter: fc.constantFrom(",", ";", "\t"),
    ends: fc.array(fc.constantFrom("\n", "\r\n", "\r"), { minLength: 1, maxLength: 3 }),
    last: fc.boolean(),
    rows: fc.array(fc.tuple(cellText, cellText, fc.constantFrom(true, false), fc.constantFrom("", " ")), {
      minLength: 1,
      maxLength: 6,
    }),
  })
  .map(({ encoding, delimiter, ends, last, rows }) => {
    const field = (raw: string, always: boolean, space: string) =>
      always || /["\r\n;,\t]/.test(raw) ? `${space}"${raw.replaceAll('"', '""')}"` : raw;
    const records = rows.map(([one, two, always, space], n) => [
      `T${n}é`,
      field(one, always, space),
      field(two, always, ""),
    ]);
    const lines = [["top", "thickness", "note"], ...records].map((fields) => fields.join(delimiter));
    const text = lines
      .map((line, n) => line + (n < lines.length - 1 || last ? (ends[n % ends.length] ?? "\n") : ""))
      .join("");
    const encoded = encodedText(text, encoding.split(" ")[0] ?? "");
    if (!(encoded instanceof Uint8Array)) throw new Error("no such character");
    return { bytes: Uint8Array.from([...MARKS[encoding], ...encoded]), delimiter };
  });

/** Wishes that fit any table: places are taken modulo its size. */
const wish = fc.record({
  what: fc.constantFrom("cell", "cell", "cell", "add", "set-aside", "bring-back", "undo", "redo"),
  row: fc.nat(20),
  col: fc.nat(2),
  after: cellText,
});
type Wish = typeof wish extends fc.Arbitrary<infer W> ? W : never;

function editOf({ what, row, col, after }: Wish, { state }: EditSession): RecordEdit {
  const table = state.result.tables[0];
  const place = 1 + (row % Math.max(1, table?.rowCount ?? 0));
  if (what === "cell") {
    const before = table ? (rowsOf(table)[place - 1]?.[col]?.raw ?? "") : "";
    return { what, table: 1, row: place, col: col + 1, before, after };
  }
  if (what === "add") return { what, table: 1, cells: [`N${row}`, after] };
  if (what === "set-aside") return { what, table: 1, row: place, reason: after || "warped" };
  return what === "bring-back" ? { what, table: 1, row: place } : { what: what as "undo" | "redo" };
}

async function afterWishes(bytes: Uint8Array, wishes: readonly Wish[]) {
  const states = [await openedSession(bytes)];
  for (const each of wishes) {
    const last = states.at(-1) as EditSession;
    const next = await edited(last, editOf(each, last));
    if (!("code" in next)) states.push(next);
  }
  return states;
}
const wishes = fc.array(wish, { minLength: 1, maxLength: 8 });
const utf8 = (text: string) => new TextEncoder().encode(text);
const raws = ({ state }: EditSession) =>
  state.result.tables.map((table) => rowsOf(table).map((row) => row.map(({ raw }) => raw)));
const asides = ({ state }: EditSession) => state.tables.map(({ setAside }) => [...setAside]);

law("a log replays to the same bytes, readings and rows set aside", [file, wishes], async ({ bytes }, wanted) => {
  const last = (await afterWishes(bytes, wanted)).at(-1) as EditSession;
  const again = await openedSession(bytes, last.log);
  expect(again.state.problems).toEqual([]);
  expect(again.state.bytes).toEqual(last.state.bytes);
  expect(asides(again)).toEqual(asides(last));
});

law(
  "undoing everything gives the first bytes, doing everything again the last",
  [file, wishes],
  async ({ bytes }, wanted) => {
    const last = (await afterWishes(bytes, wanted)).at(-1) as EditSession;
    const steps = last.state.standing.edits.length;
    const none = await editedWell(last, ...Array.from({ length: steps }, () => ({ what: "undo" }) as const));
    expect([...none.state.bytes]).toEqual([...bytes]);
    expect(asides(none).flat()).toEqual([]);
    const all = await editedWell(none, ...Array.from({ length: steps }, () => ({ what: "redo" }) as const));
    expect([...all.state.bytes]).toEqual([...last.state.bytes]);
    expect(asides(all)).toEqual(asides(last));
  },
);

law(
  "an edited cell is the only one that differs, and its field the only bytes",
  [file, wish],
  async ({ bytes }, wanted) => {
    const first = await openedSession(bytes);
    const edit = editOf({ ...wanted, what: "cell" }, first);
    const next = await edited(first, edit);
    if ("code" in next || edit.what !== "cell") return;
    const expected = raws(first).map((rows) => rows.map((row) => [...row]));
    (expected[0]?.[edit.row - 1] ?? [])[edit.col - 1] = edit.after;
    expect(raws(next)).toEqual(expected);
    const [old, now] = [bytes, next.state.bytes];
    let [head, tail] = [0, 0];
    while (head < old.length && old[head] === now[head]) head++;
    while (tail < old.length - head && old.at(-1 - tail) === now.at(-1 - tail)) tail++;
    expect(old.length - head - tail).toBeLessThanOrEqual(4 * (2 * edit.before.length + 3));
  },
);

law("an added record is the only row more", [file, fc.tuple(cellText, cellText)], async ({ bytes }, [one, two]) => {
  const first = await openedSession(bytes);
  const next = await edited(first, { what: "add", table: 1, cells: ["N", one, two] });
  if ("code" in next) return;
  expect(raws(next)).toEqual(raws(first).map((rows) => [...rows, ["N", one, two]]));
});

law("a log cut at any byte holds the first of its edits", [file, wishes, fc.nat()], async ({ bytes }, wanted, at) => {
  const states = await afterWishes(bytes, wanted);
  const log = utf8((states.at(-1) as EditSession).log);
  const cut = log.subarray(0, at % (log.length + 1));
  const read = editLogFromBytes(cut);
  const all = editLogFromBytes(log).lines;
  expect(read.lines).toEqual(all.slice(0, read.lines.length));
  expect(read.problems.map(({ code }) => code)).toEqual(read.whole === cut.length ? [] : ["log-torn"]);
  const prefix = new TextDecoder().decode(cut.subarray(0, read.whole));
  const then = states.find(({ log: each }) => each === prefix) as EditSession;
  expect((await openedSession(bytes, prefix)).state.bytes).toEqual(then.state.bytes);
});

law(
  "a changed byte of a log is found, and every other edit is read",
  [file, wishes, fc.nat(), fc.integer({ min: 1, max: 255 })],
  async ({ bytes }, wanted, at, by) => {
    const log = utf8(((await afterWishes(bytes, wanted)).at(-1) as EditSession).log);
    if (log.length === 0) return;
    const place = at % log.length;
    const all = editLogFromBytes(log).lines;
    const damaged = log.slice();
    damaged[place] = (damaged[place] ?? 0) ^ by;
    const hit = log.subarray(0, place).filter((byte) => byte === 10).length;
    const read = editLogFromBytes(damaged);
    expect(read.problems.length).toBeGreaterThan(0);
    const near = (n: number) => n === hit || (n === hit + 1 && log[place] === 10);
    expect(read.lines).toEqual(all.filter((_, n) => !near(n)));
  },
);

import { expect, it } from "vitest";
import { edited, editedWell, openedSession } from "../../../support/edit-session.ts";
import { rowsOf } from "../../../support/rows-of.ts";

const utf8 = (text: string) => new TextEncoder().encode(text);
const text = (bytes: Uint8Array) => new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
const cell = (row: number, col: number, before: string, after: string) =>
  ({ what: "cell", table: 1, row, col, before, after }) as const;

it("changes one cell and no other byte: mark, quotes, spaces, line ends, a missing last one", async () => {
  const before = '\ufeffpiece; "E" ;note\r\nA1; "2,31" ;"dry; old"\rA2;2.5\nA3;7/64";x';
  const session = await editedWell(await openedSession(utf8(before)), cell(2, 2, "2.5", "2.6"));
  expect(text(session.state.bytes)).toBe(before.replace("2.5", "2.6"));
});

it.each([
  ["a,b\n1,2\n", "2", "x,y", 'a,b\n1,"x,y"\n'],
  ["a,b\n1,2\n", "2", "x\r\ny", 'a,b\n1,"x\r\ny"\n'],
  ["a,b\n1,2\n", "2", '3/32"', 'a,b\n1,"3/32"""\n'],
  ['a,b\n1, "2"\n', "2", "3", 'a,b\n1, "3"\n'],
  ["a,b,c\n1,2,3\n4,5\n", "", "6", "a,b,c\n1,2,3\n4,5,6\n"],
])("writes a cell of %j as %j -> %j", async (file, before, after, expected) => {
  const row = before === "" ? 2 : 1;
  const col = before === "" ? 3 : 2;
  const session = await editedWell(await openedSession(utf8(file)), cell(row, col, before, after));
  expect(text(session.state.bytes)).toBe(expected);
  expect(rowsOf(session.state.result.tables[0]!)[row - 1]?.[col - 1]?.raw).toBe(after);
});

it.each([
  ["a,b\n1,2\n3,4", "a,b\n1,2\n3,4\n5,6"],
  ["a,b\r\n1,2\r\n3,4\r\n", "a,b\r\n1,2\r\n3,4\r\n5,6\r\n"],
  ["a;b\r1;2\r3;4\rtotal;6\r", "a;b\r1;2\r3;4\r5;6\rtotal;6\r"],
  ["|a|b|\n|-|-|\n|1|2|\n|3|4|\n", "|a|b|\n|-|-|\n|1|2|\n|3|4|\n|5|6|\n"],
  ["a,b\n1,2\n3,4\n\ncolour,grade,note\nred,3,x\n", "a,b\n1,2\n3,4\n5,6\n\ncolour,grade,note\nred,3,x\n"],
  ["sep=;\na;b\n1;2\n3;4\n", "sep=;\na;b\n1;2\n3;4\n5;6\n"],
])("adds a record after the table's last row in the file's own manner: %j", async (file, expected) => {
  const session = await editedWell(await openedSession(utf8(file)), { what: "add", table: 1, cells: ["5", "6"] });
  expect(text(session.state.bytes)).toBe(expected);
  expect([...session.state.tables[0]!.added]).toEqual([2]);
});

it("edits, sets aside and brings back a record that was added before", async () => {
  const session = await editedWell(
    await openedSession(utf8("a,b\nx,2\n")),
    { what: "add", table: 1, cells: ["y", "4"] },
    { what: "add", table: 1, cells: ["z"] },
    cell(3, 2, "", "9"),
    { what: "set-aside", table: 1, row: 2, reason: "warped" },
    { what: "set-aside", table: 1, row: 3, reason: "wet" },
    { what: "bring-back", table: 1, row: 2 },
  );
  expect(text(session.state.bytes)).toBe("a,b\nx,2\ny,4\nz,9\n");
  expect([...session.state.tables[0]!.setAside]).toEqual([[2, "wet"]]);
});

it("finds its records again when other ones were put in above, and says what it cannot find", async () => {
  const session = await editedWell(
    await openedSession(utf8("a,b\nx,2\ny,3\n")),
    cell(2, 2, "3", "4"),
    { what: "set-aside", table: 1, row: 1, reason: "warped" },
    { what: "add", table: 1, cells: ["z", "5"] },
  );
  const moved = await openedSession(utf8("a,b\nnew,1\nx,2\ny,3\nend,9\n"), session.log);
  expect(text(moved.state.bytes)).toBe("a,b\nnew,1\nx,2\ny,4\nz,5\nend,9\n");
  expect([...moved.state.tables[0]!.setAside]).toEqual([[1, "warped"]]);
  expect(moved.state.problems).toEqual([]);
  const lost = await openedSession(utf8("a,b\nx,2\ny,7\n"), session.log);
  expect(text(lost.state.bytes)).toBe("a,b\nx,2\ny,7\n");
  expect(lost.state.problems.map(({ code }) => code)).toEqual(["edit-record-gone", "edit-record-gone"]);
  expect(lost.state.problems[0]?.sentence).toContain("y,3");
});

it.each([
  ["a row that is not there", cell(9, 1, "x", "y"), "edit-row-missing"],
  ["a column that is not there", cell(1, 9, "x", "y"), "edit-column-missing"],
  ["a cell that holds something else", cell(1, 2, "3", "4"), "edit-stale"],
  ["a row that would be a total", cell(1, 1, "x", "total"), "edit-loses-row"],
  ["a row that would be a comment", cell(1, 1, "x", "# x"), "edit-loses-row"],
  ["half a character", cell(1, 1, "x", "\ud800"), "edit-character"],
  ["no reason", { what: "set-aside", table: 1, row: 1, reason: " " } as const, "edit-reason-missing"],
  ["a row that is not set aside", { what: "bring-back", table: 1, row: 1 } as const, "edit-not-set-aside"],
  ["too many cells", { what: "add", table: 1, cells: ["1", "2", "3"] } as const, "edit-too-many-cells"],
  ["nothing to undo", { what: "undo" } as const, "nothing-to-undo"],
  ["nothing to redo", { what: "redo" } as const, "nothing-to-redo"],
])("refuses %s", async (_, edit, code) => {
  expect(await edited(await openedSession(utf8("a,b\nx,2\ny,3\n")), edit)).toMatchObject({ code });
});

it("refuses a character that Windows-1252 lacks, and writes those that it has as one byte", async () => {
  const bytes = Uint8Array.from([...utf8("a,b\nx,h"), 0xf6, ...utf8("lzern\n")]);
  const session = await openedSession(bytes);
  expect(await edited(session, cell(1, 2, "hölzern", "𝄞"))).toMatchObject({ code: "edit-character" });
  const next = await editedWell(session, cell(1, 2, "hölzern", "“ö€"));
  expect([...next.state.bytes]).toEqual([...utf8("a,b\nx,"), 0x93, 0xf6, 0x80, 10]);
});

it("refuses an edit that would close a quotation mark of another cell", async () => {
  const session = await openedSession(utf8('a,b\n"x,2\ny,3\n'));
  expect(await edited(session, cell(2, 2, "3", 'z"'))).toMatchObject({
    code: expect.stringMatching(/^edit-(changes-reading|loses-row)$/),
  });
});

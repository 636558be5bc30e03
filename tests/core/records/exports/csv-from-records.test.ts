// What is exported as CSV is read again cell by cell as it was.
import { existsSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import {
  csvFromRecords,
  descriptionFromJson,
  descriptionOfRecords,
  type ReadOptions,
  readTable,
} from "../../../../src/core/records/index.ts";
import { law } from "../../../support/law.ts";
import { rowsOf } from "../../../support/rows-of.ts";

const tableOf = (text: string, options?: ReadOptions) => {
  const [table] = readTable(new TextEncoder().encode(text), "t.csv", options).tables;
  if (!table) throw new Error("no table");
  return table;
};
const heads = (table: ReturnType<typeof tableOf>) =>
  table.columns.map(({ name, unit, kind }) => ({ name, unit, kind }));
const again = (text: string, read: ReadOptions = {}) => {
  const table = tableOf(text, read);
  const about = descriptionFromJson(JSON.stringify(descriptionOfRecords({ read })));
  if (!about.ok) throw new Error("the description is refused");
  return {
    table,
    csv: csvFromRecords(table, new Map()),
    back: tableOf(csvFromRecords(table, new Map()), about.value.read),
  };
};

it("writes header with unit, raw cells and guards", () => {
  const { csv } = again('piece,mass (g),note\nA,"1,5",=cmd\nB,-2,"say ""no"""\n', { decimal: "," });
  expect(csv).toBe('piece,mass (g),note\r\nA,"1,5",\'=cmd\r\nB,-2,"say ""no"""\r\n');
});
it("keeps rows that were set aside, and says why", () => {
  const table = tableOf("piece,set aside\nA,no\nB,yes\n");
  expect(csvFromRecords(table, new Map([[1, "split, in drying"]]))).toBe(
    'piece,set aside,set aside (2)\r\nA,no,\r\nB,yes,"split, in drying"\r\n',
  );
});
it.each([
  ["inches", "piece,width (in)\nA,7/64\nB,3/32\n", {}],
  ["decimal commas", "piece;mass (g)\nA;1,234\nB;2,5\n", {}],
  ["units in cells", "piece,scale\nA,650 mm\nB,640 mm\n", {}],
  ["bare numbers among units", "piece,scale\nA,650 mm\nB,640\n", {}],
  ["an answer of the maker", 'piece,mass (g)\nA,"1,234"\nB,"1,300"\n', { decimal: "," as const }],
  ["a doubled name and a units row", "piece,mass,mass\n,g,kg\nA,1,2\nB,3,4\n", {}],
])("reads again the same: %s", (_, text, options) => {
  const { table, back } = again(text, options);
  expect(heads(back)).toEqual(heads(table));
  expect(rowsOf(back)).toEqual(rowsOf(table));
});

const text = fc.string({
  unit: fc.constantFrom(..."'=+-@＝\t\r\n\0\"|;, aé1.#".split(""), "\u202e", "𝄞", "\ufeff"),
  maxLength: 8,
});
law("any text comes back as the raw text of its cell", [fc.array(text, { minLength: 1, maxLength: 6 })], (notes) => {
  const rows = notes.map((note, at) => `piece number ${at},"${note.replaceAll('"', '""')}",some quiet words`);
  const { table, back } = again(`piece,note,words\n${rows.join("\n")}\n`, { delimiter: "," });
  expect(rowsOf(table).map((row) => row[1]?.raw)).toEqual(notes);
  expect(rowsOf(back).map((row) => row.map((cell) => cell.raw))).toEqual(
    rowsOf(table).map((row) => row.map((cell) => cell.raw)),
  );
});

const naughty = `${process.env.THUMBRULE_SUITES ?? ""}/naughty-strings/blns.json`;
it.skipIf(!existsSync(naughty))("brings back every naughty string (THUMBRULE_SUITES)", () => {
  const texts = JSON.parse(readFileSync(naughty, "utf8")) as string[];
  const rows = texts.map((text, at) => `N-${at},"${text.replaceAll('"', '""')}"`);
  const { back } = again(`piece,note\n${rows.join("\n")}\n`);
  expect(rowsOf(back).map((row) => row[1]?.raw)).toEqual(texts);
});

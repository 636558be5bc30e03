// Whole files against their one right reading. The readings were stated by hand from the rules of reading (see tests/messy), never by a program.
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { printedReadResult, readTable } from "../../../src/core/records/index.ts";
import { rowsOf } from "../../support/rows-of.ts";

const folder = new URL("../../messy/", import.meta.url);
const text = (content: string) => new TextEncoder().encode(content);
const names = readdirSync(new URL("expected/", folder))
  .map((name) => name.replace(/\.json$/, ""))
  .filter((name) => !/\.(?:xlsx|ods)$/.test(name));

/** Numbers as text of twelve digits, so that equal within 1e-9 or so is equal; lists whose order says nothing are sorted. */
const rounded = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, one) => (typeof one === "number" && !Number.isInteger(one) ? one.toPrecision(10) : one)),
  );
const sorted = (list: readonly unknown[]) =>
  list.map((one) => JSON.stringify(Object.entries(one as object).sort(([a], [b]) => (a < b ? -1 : 1)))).sort();

it.each(names)("reads %s as its maker would", (name) => {
  const expected = JSON.parse(readFileSync(new URL(`expected/${name}.json`, folder), "utf8"));
  const result = readTable(new Uint8Array(readFileSync(new URL(`files/${name}`, folder))), name, expected.options);
  const printed = JSON.parse([...printedReadResult(result)].join(""));
  expect(rounded(printed.tables)).toEqual(rounded(expected.tables));
  expect(sorted(result.setAside)).toEqual(sorted(expected.setAside));
  expect(sorted(result.warnings)).toEqual(sorted(expected.warnings));
});

const firstCells = (content: string, options = {}) =>
  readTable(text(content), "x.csv", options)
    .tables.slice(0, 1)
    .flatMap((table) => rowsOf(table).map((row) => row.at(-1)));
const codesOf = (content: string, options = {}) =>
  readTable(text(content), "x.csv", options).warnings.map((warning) => warning.code);

it("refuses packed files, old workbooks, pictures and documents, with one code and no table", () => {
  for (const head of [
    [0x50, 0x4b, 3, 4],
    [0xd0, 0xcf, 0x11, 0xe0],
    [0x89, 0x50, 0x4e, 0x47],
    [0x25, 0x50, 0x44, 0x46],
  ])
    expect(readTable(new Uint8Array([...head, 44, 49, 10]), "x.csv")).toEqual({
      file: "x.csv",
      tables: [],
      setAside: [],
      warnings: [{ code: "not-a-table" }],
    });
  expect(codesOf(`a,b\n${"\u0001\u0002".repeat(20)},1\n`)).toEqual(["not-a-table"]);
});

it("calls no bytes an empty file", () =>
  expect(readTable(new Uint8Array(0), "x.csv").warnings).toEqual([{ code: "empty-file" }]));

it("refuses a table with more columns than the limit", () =>
  expect(codesOf(`${"a,".repeat(5000)}a\n`)).toEqual(["too-many-columns"]));

it("takes the maker's answer on the decimal mark in place of the evidence", () => {
  expect(firstCells("board;mass (g)\nA;1,234\n", { decimal: "." })[0]).toMatchObject({ value: 1234 });
  expect(firstCells("board;mass (g)\nA;1,234\n", { decimal: "," })[0]).toMatchObject({ value: 1.234 });
  expect(firstCells("board;mass (g)\nA;2,31\n", { decimal: "." })[0]).toMatchObject({
    kind: "unreadable",
    code: "unreadable-number",
  });
});

it("takes the maker's answer on which number is the day", () => {
  expect(firstCells("board,split\nA,3/4/2024\n", { dayFirst: true })[0]).toMatchObject({ value: "2024-04-03" });
  expect(firstCells("board,split\nA,3/4/2024\n", { dayFirst: false })[0]).toMatchObject({ value: "2024-03-04" });
});

it("reads cells whose names are words of the language as plain text", () => {
  const { tables } = readTable(text("__proto__,constructor\ntoString,hasOwnProperty\nvalueOf,x\n"), "x.csv", {
    aliases: { constructor: { x: "y" } },
  });
  expect(tables[0]?.columns.map((column) => column.name)).toEqual(["__proto__", "constructor"]);
  expect(tables.flatMap(rowsOf)[1]?.[1]).toMatchObject({ value: "y" });
});

it("keeps the NUL in the raw text and out of the reading", () =>
  expect(firstCells("board,mass (g)\nA,2\u00001.5\nB,3\n")[0]).toEqual({
    raw: "2\u00001.5",
    kind: "quantity",
    value: 21.5,
    unit: "g",
    code: "nul-removed",
  }));

it("asks about a character that could not be decoded", () => {
  const bytes = new Uint8Array([
    ...text("board,mass (g),remark\nA,2.5,d"),
    0x81,
    ...text("ll\nB,3"),
    0x81,
    ...text(",x\n"),
  ]);
  const rows = readTable(bytes, "x.csv").tables.flatMap(rowsOf);
  expect(rows[0]?.[2]).toMatchObject({ kind: "text", value: "d\ufffdll", code: "bad-character" });
  expect(rows[1]?.[1]).toMatchObject({ kind: "unreadable", code: "bad-character" });
});

it("points out numbers that stand for missing far outside the rest, and keeps them", () =>
  expect(firstCells("board,mass (g)\nA,2.5\nB,3\nC,-999\nD,999\nE,9\n").map((cell) => cell?.code)).toEqual([
    undefined,
    undefined,
    "maybe-missing-number",
    "maybe-missing-number",
    undefined,
  ]));

it("leaves a row of names and pitches after a blank line in its table", () =>
  expect(readTable(text("instrument,tone\nIN-1,G#2\n\nIN-2,A2\nIN-3,A2\n"), "x.csv").tables).toHaveLength(1));

it("reads a file in which every one of many records has a warning", () => {
  const result = readTable(text(`a,b\n${'"z"y,w\n'.repeat(150_000)}`), "x.csv");
  expect(result.warnings.length).toBeGreaterThan(150_000);
});

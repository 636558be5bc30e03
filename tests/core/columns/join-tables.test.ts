import { expect, it } from "vitest";
import { columnsFromTable, joinTables } from "../../../src/core/columns/index.ts";
import { tableOfRows } from "./table-of-rows.ts";

const tops = columnsFromTable(
  tableOfRows(
    "tops",
    [
      ["top_id", null, "text"],
      ["mass", "g", "quantity"],
    ],
    [
      ["T-2", 150],
      ["T-1", 140],
      ["T-3", 160],
      ["T-4", 170],
      [null, 180],
    ],
  ),
  "tops.csv",
  "tops",
);
const instruments = columnsFromTable(
  tableOfRows(
    "instruments",
    [
      ["top_id", null, "text"],
      ["mass", "kg", "quantity"],
      ["sound", null, "text"],
    ],
    [
      ["T-1", 1.4, "a"],
      ["T-2", 1.5, "b"],
      ["T-2", 1.6, "a"],
      ["T-9", 1.7, "b"],
      ["T\u20113", 1.8, "a"],
      [null, 1.9, "b"],
    ],
  ),
  "instruments.csv",
  "instruments",
);
const { table, notes } = joinTables(tops, instruments, "top_id");
const mass = table.columns.get("mass_2");

it("every record of the left table stays, in its order, once for each match", () =>
  expect(table.rows.map(({ row }) => row)).toEqual([1, 1, 2, 3, 4, 5]));
it("a column that both tables have gets _2 and its own values; without a match it is missing", () =>
  expect(mass?.kind === "quantity" && [...mass.values]).toEqual([1.5, 1.6, 1.4, Number.NaN, Number.NaN, Number.NaN]));
it("a joined number traces to the right table's cell", () =>
  expect(table.cellAt("mass_2", 1)).toMatchObject({ file: "instruments.csv", row: 3, raw: "1.6", column: "mass_2" }));
it("a missing match has no cell", () => expect(table.cellAt("mass_2", 3)).toBeNull());
it("unmatched and several matches are said", () => {
  expect(notes.join("\n")).toContain("1 record of tops.csv matches several of instruments.csv");
  expect(notes.join("\n")).toContain("3 records of tops.csv have no match in instruments.csv");
  expect(notes.join("\n")).toContain("3 records of instruments.csv have no match in tops.csv");
});
it("an id with another hyphen is pointed out and not joined", () => expect(notes.at(-1)).toContain("look alike"));

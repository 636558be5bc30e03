import { expect, it } from "vitest";
import { columnsFromTable, withRoles } from "../../../src/core/columns/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { tableOfRows } from "./table-of-rows.ts";

const tops = tableOfRows(
  "tops",
  [
    ["Board", null, "text"],
    ["Final thickness", "mm", "quantity"],
    ["species", null, "text"],
    ["notes", null, "text"],
    ["grade", "/5", "grade"],
    ["split", null, "date"],
    ["quartered", null, "yes-no"],
  ],
  [
    ["B-01", 2.3, "spruce", "bright, quick to speak", 4, "2024-05-02", "yes"],
    ["B-02", { value: 0.1, unit: "[in_i]", code: "unit-differs" }, "cedar", "dark", 2, "2024-05", "no"],
    ["B-03", { value: 3, unit: "g", code: "unit-differs" }, "spruce", null, null, null, null],
    ["B-04", { value: 2.4, uncertainty: 0.1, code: "range" }, "spruce", "dry and open", 5, "2024-06-01", "yes"],
    ["B-01", 2.3, "spruce", "bright, quick to speak", 4, "2024-05-02", "yes"],
  ],
);
const table = columnsFromTable(tops, "records/tops.csv", "tops", {
  columns: { "Final thickness": { uncertainty: "0.02 mm" } },
});
const thickness = table.columns.get("final_thickness");
if (thickness?.kind !== "quantity") throw new Error("thickness is a quantity");

it("a column is called by its header in lower case with underscores", () =>
  expect([...table.columns.keys()].slice(0, 2)).toEqual(["board", "final_thickness"]));
it("a cell in inches of a column in mm is converted", () => closeTo(thickness.values[1] ?? 0, 0.00254, 1e-15));
it("a cell in grams of a column in mm is missing, and the table says so", () => {
  expect(thickness.values[2]).toBeNaN();
  expect(table.notes.join(" ")).toContain("1 cell of final_thickness has a unit of another kind");
});
it("a description's uncertainty holds for each cell that has none of its own", () =>
  closeTo(thickness.uncertainty?.[0] ?? 0, 0.02e-3, 1e-12));
// JCGM 100:2008, 4.3.7: half-width / sqrt(3)
it("half a range becomes a standard uncertainty by the square root of three", () =>
  closeTo(thickness.uncertainty?.[3] ?? 0, 0.1e-3 / Math.sqrt(3), 1e-12));
it("cells with a code are counted as warnings of the column", () => expect(thickness.warnings).toBe(3));
it("repeating names are labels, notes are words, stars are grades", () =>
  expect(
    ["species", "notes", "grade", "split", "quartered", "board"].map((name) => table.columns.get(name)?.kind),
  ).toEqual(["label", "words", "grade", "date", "yes-no", "label"]));
it("grades out of five know all five levels, lowest first", () => {
  const grade = table.columns.get("grade");
  expect(grade?.kind === "grade" && [grade.levels, [...grade.codes]]).toEqual([
    ["1", "2", "3", "4", "5"],
    [3, 1, -1, 4, 3],
  ]);
});
it("a date that is only a month keeps its text", () => {
  const split = table.columns.get("split");
  // 2024-05-02 is day 19845: `date -d 2024-05-02 +%s` / 86400
  expect(split?.kind === "date" && [split.texts[1], split.days[0]]).toEqual(["2024-05", 19845]);
});
it("a row that repeats an earlier one keeps its values and takes no part", () =>
  expect([...table.leftOut]).toEqual([[4, "repeated row"]]));
it("a number traces to its raw cell", () =>
  expect(table.cellAt("final_thickness", 1)).toEqual({
    file: "records/tops.csv",
    table: "tops",
    row: 2,
    col: 2,
    column: "final_thickness",
    raw: "0.1",
    reading: "0.1 in",
    warning: expect.stringContaining("another unit"),
  }));
it("a piece that the maker leaves out is left out with the maker's reason", () => {
  const said = withRoles(table, {
    piece: "board",
    shared: "species",
    leaveOut: [{ piece: "B-03", because: "split while drying" }],
  });
  expect(said.rows[2]?.piece).toBe("B-03");
  expect(said.leftOut.get(2)).toBe("split while drying");
  expect(said.shared).toBe("species");
});
it("headers that become one name are told apart, and the table says so", () => {
  const twice = columnsFromTable(
    tableOfRows(
      "t",
      [
        ["Mass", "g", "quantity"],
        ["mass!", "g", "quantity"],
        ["__proto__", null, "text"],
      ],
      [[1, 2, "a"]],
    ),
    "t.csv",
    "t",
  );
  expect([...twice.columns.keys()]).toEqual(["mass", "mass_2", "proto"]);
  expect(twice.notes).toHaveLength(1);
});

import { expect, it } from "vitest";
import { type Column, cellsBehind, columnsFromTable } from "../../../src/core/columns/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { tableOfRows } from "./table-of-rows.ts";

const heads = [
  ["board", null, "text"],
  ["thickness 1", "mm", "quantity"],
  ["thickness 2", "mm", "quantity"],
  ["Thickness / treble", "mm", "quantity"],
  ["mass", "g", "quantity"],
] as const;
const readings = ["thickness 1", "thickness 2", "Thickness / treble"];
const tops = tableOfRows("tops", heads, [
  ["B-01", 2.3, 2.4, 2.5, 150],
  ["B-02", 2.3, null, { value: 0.1, unit: "[in_i]", code: "unit-differs" }, 160],
  ["B-03", 2.3, null, null, 160],
  ["B-04", null, null, null, 160],
  ["B-05", 2.3, 2.3, 2.3, 160],
]);
const quantity = (column: Column | undefined) => {
  if (column?.kind !== "quantity") throw new Error("a quantity");
  return column;
};
const repeats = [{ name: "Thickness", columns: readings }];
const plain = columnsFromTable(tops, "tops.csv", "tops", { repeats });
const uncertain = columnsFromTable(tops, "tops.csv", "tops", {
  repeats,
  columns: Object.fromEntries(readings.map((name) => [name, { uncertainty: "0.03 mm" }])),
});

it("readings become one column, and stay", () =>
  expect([...plain.columns.keys()]).toEqual([
    "board",
    "thickness_1",
    "thickness_2",
    "thickness_treble",
    "mass",
    "thickness",
  ]));
// By hand: sd of 2.3 2.4 2.5 is 0.1, / sqrt 3; JCGM 100:2008, 4.2.3
it("the mean has the standard error of the spread as its uncertainty", () => {
  const { values, uncertainty, unit } = quantity(plain.columns.get("thickness"));
  closeTo(values[0] ?? 0, 2.4e-3, 1e-14);
  closeTo(uncertainty?.[0] ?? 0, 0.1e-3 / Math.sqrt(3), 1e-12);
  expect(unit).toBe("mm");
});
// 2.3 mm and 2.54 mm: mean 2.42, sd 0.24 / sqrt 2, standard error 0.12
it("a reading in another unit counts, and a missing one is left out and counted", () => {
  const { values, uncertainty } = quantity(plain.columns.get("thickness"));
  closeTo(values[1] ?? 0, 2.42e-3, 1e-14);
  closeTo(uncertainty?.[1] ?? 0, 0.12e-3, 1e-12);
  expect(plain.notes).toEqual([
    "2 records have fewer than 3 readings of thickness; the mean is that of the readings there are.",
  ]);
});
it("no reading, no value", () => {
  const { values, uncertainty } = quantity(plain.columns.get("thickness"));
  expect([values[3], uncertainty?.[3]]).toEqual([Number.NaN, Number.NaN]);
});
// JCGM 100:2008, 5.1.2: independent parts add in squares; each reading's own counts a third
it("each reading's own uncertainty joins the spread's; one reading has only its own, equal ones only theirs", () => {
  const { uncertainty } = quantity(uncertain.columns.get("thickness"));
  closeTo(uncertainty?.[0] ?? 0, Math.hypot(0.1e-3 / Math.sqrt(3), 0.03e-3 / Math.sqrt(3)), 1e-12);
  closeTo(uncertainty?.[2] ?? 0, 0.03e-3, 1e-12);
  closeTo(uncertainty?.[4] ?? 0, 0.03e-3 / Math.sqrt(3), 1e-12);
});
it("knows the columns it rests on and what each adds to its error", () => {
  const { origin, contributions } = quantity(uncertain.columns.get("thickness"));
  expect(origin).toMatchObject({ roots: ["thickness_1", "thickness_2", "thickness_treble"], readings: true });
  expect([...(contributions?.keys() ?? [])]).toEqual([
    "spread of mean(thickness_1, thickness_2, thickness_treble)",
    "thickness_1",
    "thickness_2",
    "thickness_treble",
  ]);
});
it("the mean is no raw cell; its readings are", () => {
  expect(plain.cellAt("thickness", 0)).toBeNull();
  expect(cellsBehind(plain, "thickness_treble", 1)).toMatchObject([{ raw: "0.1", row: 2, col: 4 }]);
});
it.each([
  ["one column alone", ["thickness 1"]],
  ["unlike kinds", ["thickness 1", "mass"]],
  ["a label", ["thickness 1", "board"]],
  ["one column and one that is not there", ["thickness 1", "thickness 9"]],
  ["two columns and one that is not there", ["thickness 1", "thickness 2", "thickness 9"]],
])("%s is no set of readings, and the table says so", (_, columns) => {
  const table = columnsFromTable(tops, "tops.csv", "tops", { repeats: [{ name: "t", columns }] });
  expect(table.columns.has("t")).toBe(false);
  expect(table.notes).toHaveLength(1);
});
it("a name that a column has already gets _2", () => {
  const table = columnsFromTable(tops, "tops.csv", "tops", { repeats: [{ name: "mass", columns: readings }] });
  expect([...table.columns.keys()].at(-1)).toBe("mass_2");
});

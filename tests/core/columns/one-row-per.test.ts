import fc from "fast-check";
import { expect, it } from "vitest";
import { type Column, cellsBehind, columnsFromTable, withRoles } from "../../../src/core/columns/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";
import { tableOfRows } from "./table-of-rows.ts";

const heads = [
  ["Board", null, "text"],
  ["thickness", "mm", "quantity"],
  ["species", null, "text"],
  ["split", null, "date"],
  ["quartered", null, "yes-no"],
  ["notes", null, "text"],
  ["grade", "/5", "grade"],
  ["tap", null, "pitch"],
] as const;
type Row = Parameters<typeof tableOfRows>[2][number];
const rows: readonly Row[] = [
  ["B-2", 2.3, "spruce", "2024-05-02", "yes", "bright, quick", 4, "G#2"],
  ["B-1", 2.0, "cedar", null, "no", null, 3, null],
  ["B-2", 2.5, "spruce", null, "no", "stiff, ringing", 4, "A2"],
  ["B-1", null, "cedar", "2024-06-01", null, null, null, null],
  ["B-2", 2.4, "cedar", null, null, "bright, quick", null, null],
  [null, 9, "cypress", null, null, null, null, null],
  [null, 8, "cypress", null, null, null, null, null],
];
const said = { oneRowPer: "Board" };
const tableFrom = (all: readonly Row[], extra = {}) =>
  columnsFromTable(tableOfRows("tops", heads, all), "tops.csv", "tops", { ...said, ...extra });
const table = tableFrom(rows);
const quantity = (column: Column | undefined) => {
  if (column?.kind !== "quantity") throw new Error("a quantity");
  return column;
};
const thickness = quantity(table.columns.get("thickness"));

it("rows of a piece become one, in the order in which pieces come; a row without a piece stays alone", () =>
  expect(table.rows.map(({ row, piece }) => [row, piece])).toEqual([
    [1, "B-2"],
    [2, "B-1"],
    [6, "row 6"],
    [7, "row 7"],
  ]));
// By hand: 2.3 2.5 2.4: sd 0.1, / sqrt 3; JCGM 100:2008, 4.2.3. B-1 has one reading and no uncertainty of its own.
it("quantities are means with the standard error of the spread", () => {
  closeTo(thickness.values[0] ?? 0, 2.4e-3, 1e-14);
  closeTo(thickness.uncertainty?.[0] ?? 0, 0.1e-3 / Math.sqrt(3), 1e-12);
  expect([thickness.values[1], thickness.uncertainty?.[1]]).toEqual([2e-3, 0]);
});
it("each reading's own uncertainty joins in squares", () => {
  const own = quantity(
    tableFrom(rows, { columns: { thickness: { uncertainty: "0.03 mm" } } }).columns.get("thickness"),
  ).uncertainty;
  closeTo(own?.[0] ?? 0, Math.hypot(0.1e-3, 0.03e-3) / Math.sqrt(3), 1e-12);
  closeTo(own?.[1] ?? 0, 0.03e-3, 1e-12);
});
it("what all rows of a piece agree on stays, though some rows say nothing", () => {
  const [split, grade, quartered] = [
    table.columns.get("split"),
    table.columns.get("grade"),
    table.columns.get("quartered"),
  ];
  expect(split?.kind === "date" && split.texts).toEqual(["2024-05-02", "2024-06-01", null, null]);
  expect(grade?.kind === "grade" && [...grade.codes].map((code) => grade.levels[code])).toEqual([
    "4",
    "3",
    undefined,
    undefined,
  ]);
  expect(quartered?.kind === "yes-no" && [...quartered.values]).toEqual([-1, 0, -1, -1]);
});
it("what they disagree on is missing, and the piece is named", () => {
  const species = table.columns.get("species");
  expect(species?.kind === "label" && [...species.codes].map((code) => species.names[code])).toEqual([
    undefined,
    "cedar",
    "cypress",
    "cypress",
  ]);
  expect(table.notes).toContain("species is not the same in all rows of 1 piece and counts as missing there: B-2.");
  expect(table.notes).toContain("tap is not the same in all rows of 1 piece and counts as missing there: B-2.");
});
it("notes of one piece stand together, each once", () => {
  const notes = table.columns.get("notes");
  expect(notes?.kind === "words" && notes.texts[0]).toBe("bright, quick; stiff, ringing");
});
it("the table says how many readings became how many pieces", () =>
  expect(table.notes[0]).toContain("7 rows of tops are readings of 4 pieces"));
it("every reading is behind the mean, and the mean is no raw cell", () => {
  expect(cellsBehind(table, "thickness", 0).map(({ row, raw }) => [row, raw])).toEqual([
    [1, "2.3"],
    [3, "2.5"],
    [5, "2.4"],
  ]);
  expect(table.cellAt("thickness", 0)).toBeNull();
  expect(table.cellAt("thickness", 2)?.raw).toBe("9");
  expect(table.cellAt("board", 0)?.raw).toBe("B-2");
});
it("rows that are alike to the last cell are readings too", () => {
  const twice = tableFrom([...rows, rows[4] as Row]);
  closeTo(quantity(twice.columns.get("thickness")).values[0] ?? 0, 2.4e-3, 1e-14);
  // 2.3 2.5 2.4 2.4: squares .02 / 3, / 4
  closeTo(quantity(twice.columns.get("thickness")).uncertainty?.[0] ?? 0, 1e-3 * Math.sqrt(0.02 / 12), 1e-12);
  expect(twice.notes).toContain("1 row equals an earlier one and counts as a reading.");
  expect(twice.leftOut.size).toBe(0);
});
it("no such column: every row stays, and the table says so", () => {
  const lost = tableFrom(rows, { oneRowPer: "piece" });
  expect(lost.rowCount).toBe(7);
  expect(lost.notes.join()).toContain("no such column");
});
it("a piece is left out by its name", () =>
  expect([...withRoles(table, { leaveOut: [{ piece: "B-1", because: "split" }] }).leftOut]).toEqual([[1, "split"]]));
law(
  "turning the rows round changes no piece",
  [
    fc.array(fc.tuple(fc.constantFrom("a", "b", "c"), fc.option(fc.double({ min: 1, max: 9, noNaN: true }))), {
      minLength: 1,
      maxLength: 30,
    }),
  ],
  (written) => {
    const of = (all: readonly (readonly [string, number | null])[]) => {
      const made = columnsFromTable(
        tableOfRows(
          "t",
          [
            ["id", null, "text"],
            ["h", "mm", "quantity"],
          ],
          all,
        ),
        "t.csv",
        "t",
        { oneRowPer: "id" },
      );
      const { values, uncertainty } = quantity(made.columns.get("h"));
      return new Map(made.rows.map(({ piece }, row) => [piece, [values[row], uncertainty?.[row]]]));
    };
    const forth = of(written);
    for (const [piece, result] of of([...written].reverse())) expect(result).toEqual(forth.get(piece));
  },
);

import { expect, it } from "vitest";
import type { Column, ColumnTable, QuantityColumn } from "../../../src/core/columns/index.ts";
import { embeddedTable } from "../../../src/notebook/share/embedded-table.ts";
import { withheldColumns } from "../../../src/notebook/share/withheld-columns.ts";

const quantity = (
  name: string,
  values: readonly number[],
  formula?: { readonly text: string; readonly roots: readonly string[] },
): QuantityColumn => ({
  kind: "quantity",
  name,
  header: name,
  warnings: 0,
  values: Float64Array.from(values),
  uncertainty: null,
  unit: "mm",
  dimension: { length: [1, 1] },
  origin: formula
    ? { from: "formula", formula: formula.text, parents: formula.roots, roots: formula.roots }
    : { from: "file", file: "records/tops.csv", table: "tops", col: 1 },
});
const thickness = quantity("thickness", [2.71, 2.38, 2.55, 2.9, 2.47]);
const mass = quantity("mass", [181, 175.5, 190.2, 179.9, 204.3]);
const price = quantity("price", [55, 71, 64, 58, 90]);
const density = quantity(
  "density",
  [...mass.values].map((value, i) => value / (thickness.values[i] ?? 1)),
  { text: "mass / thickness", roots: ["mass", "thickness"] },
);

function tables(...columns: readonly Column[]): ReadonlyMap<string, ColumnTable> {
  const all = new Map(columns.map((column) => [column.name, column]));
  const rows = [1, 2, 3, 4, 5].map((row) => ({ table: "tops", row, piece: `T-${row}` }));
  const cellAt: ColumnTable["cellAt"] = (name, row) => {
    const column = all.get(name);
    return column?.kind === "quantity" && column.origin.from === "file"
      ? {
          file: "records/tops.csv",
          table: "tops",
          row: row + 1,
          col: 1,
          column: name,
          raw: `${column.values[row]}`,
          reading: `${column.values[row]} mm`,
        }
      : null;
  };
  return new Map([
    [
      "tops",
      { name: "tops", rowCount: 5, columns: all, rows, leftOut: new Map(), cellAt, notes: ["price has a note"] },
    ],
  ]);
}

const notebookText = [
  "---",
  "title: Tops",
  "---",
  "Some prose.",
  "",
  "```records tops",
  "from records/tops.csv",
  "```",
  "",
  "```columns tops",
  "density = mass / thickness",
  "double = 2 * mass",
  "```",
  "",
  "```question heavy",
  "mass against price",
  "```",
  "",
  "```question thick",
  "density against price",
  "```",
  "",
].join("\n");
const without = (names: readonly string[], text = notebookText, of = tables(thickness, mass, price, density)) =>
  withheldColumns({ notebookText: text, file: "tops.md", tables: of, without: names });

it("changes nothing when nothing is held back", () => {
  expect(without([])).toMatchObject({ notebookText, withheld: 0, problems: [], warnings: [] });
});

it("takes out the column, what is computed from it, and the questions about either", () => {
  const kept = without(["thickness"]);
  expect(kept.problems).toEqual([]);
  expect(kept.notebookText).not.toMatch(/thickness|density|question thick/);
  expect(kept.notebookText).toContain("double = 2 * mass");
  expect(kept.notebookText).toContain("mass against price");
  const bytes = JSON.stringify([...kept.tables.values()].map(embeddedTable));
  for (const gone of ["thickness", "2.71", "2.38", "density"]) expect(bytes).not.toContain(gone);
  expect(bytes).toContain("181");
});

it("takes out notes of the table that name the column", () => {
  expect(JSON.stringify([...without(["price"]).tables.values()].map(embeddedTable))).not.toContain("price");
});

it("stops and names the way when a column that stays gives it back through a formula", () => {
  const measured = quantity("weight_by_volume", density.values as unknown as readonly number[]);
  const [problem] = without(["thickness"], notebookText, tables(thickness, mass, price, density, measured)).problems;
  expect(problem?.code).toBe("can-be-solved-for");
  expect(problem?.sentence).toBe(
    "thickness could be worked out from weight_by_volume: weight_by_volume is the same as density, and density = mass / thickness can be turned round. Hold that back too.",
  );
});

it("stops when a column that stays is the same in another unit", () => {
  const inches = quantity(
    "thickness_in",
    [...thickness.values].map((value) => value / 25.4),
  );
  expect(
    without(["thickness"], notebookText, tables(thickness, mass, price, density, inches)).problems.map(
      (problem) => problem.code,
    ),
  ).toContain("can-be-solved-for");
});

it("says which column there is not", () => {
  expect(without(["colour"]).problems.map((problem) => problem.sentence)).toEqual([
    "There is no column colour to hold back. Check the spelling against the column heads.",
  ]);
});

it("warns of prose that names the column or quotes a cell of it", () => {
  for (const prose of ["The thickness is secret.", "The best was 2.71 or so."])
    expect(
      without(["thickness"], notebookText.replace("Some prose.", prose)).warnings.map((warning) => warning.code),
    ).toEqual(["prose-mentions"]);
  expect(without(["thickness"]).warnings).toEqual([]);
});

it("stops where the column names the pieces or joins the tables", () => {
  const text = notebookText.replace("from records/tops.csv", "from records/tops.csv\npieces share price");
  expect(without(["price"], text).problems.map((problem) => problem.code)).toContain("column-in-use");
});

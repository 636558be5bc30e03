import { expect, it } from "vitest";
import { cellsFromEmbedded, embeddedCells } from "../../../src/notebook/share/embedded-cells.ts";

const cell = { file: "tops.csv", table: "tops", row: 1, col: 2, column: "mass", raw: "171,2", reading: "171.2 g" };

it("says what cells share once, and gives each back as it went in", () => {
  const cells = [null, cell, { ...cell, row: 2, raw: "", reading: "missing" }];
  const embedded = embeddedCells("mass", cells);
  expect(embedded.cells).toEqual([null, [1, "171,2", "171.2 g"], [2, "", "missing"]]);
  expect(cellsFromEmbedded(embedded)).toEqual(cells);
});

it("keeps a cell from another file, column or name whole", () => {
  const cells = [cell, { ...cell, file: "more.csv" }, { ...cell, col: 3 }, { ...cell, column: "mass_2" }];
  expect(cellsFromEmbedded(embeddedCells("mass", cells))).toEqual(cells);
});

it("keeps a column without any cell", () => {
  expect(cellsFromEmbedded(embeddedCells("mass", [null, null]))).toEqual([null, null]);
});

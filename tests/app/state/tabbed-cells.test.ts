import { expect, it } from "vitest";
import { tabbedCells } from "../../../src/app/state/tabbed-cells.ts";

it("takes columns that a message lines up with spaces for cells", () => {
  expect(tabbedCells("Piece  Top wood   Thickness\n\nA1     red cedar  2.31\n A2    spruce     2.40 \n")).toBe(
    "Piece\tTop wood\tThickness\n\nA1\tred cedar\t2.31\nA2\tspruce\t2.40\n",
  );
});

it.each([
  ["cells of a sheet", "Piece\tNote\nA1\ttwo  spaces\n"],
  ["cells with commas", "Piece,  Thickness\nA1,    2,31\n"],
  ["lines that are not alike", "Piece  Wood\nA1 cedar\n"],
  ["one column of words", "Wood\nred cedar\n"],
  ["nothing", ""],
])("leaves %s as they are", (_, text) => {
  expect(tabbedCells(text)).toBe(text);
});

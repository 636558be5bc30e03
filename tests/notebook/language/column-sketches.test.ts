import { expect, it } from "vitest";
import { columnsFromTable } from "../../../src/core/columns/index.ts";
import { readTable } from "../../../src/core/records/index.ts";
import { columnSketches } from "../../../src/notebook/language/index.ts";

it("asks about the mean of repeated readings, not about each", () => {
  const bytes = new TextEncoder().encode("top,h 1 (mm),h 2 (mm),mass (g)\nA,2.1,2.2,180\nB,2.3,2.4,190\n");
  const [table] = readTable(bytes, "x.csv").tables;
  if (!table) throw new Error("no table");
  const said = { repeats: [{ name: "h", columns: ["h 1", "h 2"] }] };
  const names = columnSketches(columnsFromTable(table, "x.csv", "x", said)).map(({ name }) => name);
  expect(names).toEqual(["top", "mass", "h"]);
});

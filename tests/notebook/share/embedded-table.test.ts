import { expect, it } from "vitest";
import { columnTableFromEmbedded, embeddedTable } from "../../../src/notebook/share/embedded-table.ts";
import { smallCopy } from "./small-copy.ts";

it("gives a table back from a copy as it went in, gaps and raw cells too", () => {
  const [table] = smallCopy("é").tables;
  if (!table) throw new Error("no table");
  const restored = columnTableFromEmbedded(JSON.parse(JSON.stringify(table)));
  expect(embeddedTable(restored)).toEqual({
    ...table,
    cells: [...table.cells, { column: "species", file: "", table: "", col: 0, cells: [null, null, null] }],
  });
  expect(restored.cellAt("thickness", 0)?.raw).toBe("2.71 é");
  expect(restored.cellAt("thickness", 2)).toBeNull();
});

// Means of repeated readings in a dated copy: they come back as they went in, and lead to each raw cell.
import { expect, it } from "vitest";
import { cellsBehind, columnsFromTable } from "../../../src/core/columns/index.ts";
import { readTable } from "../../../src/core/records/index.ts";
import { compareCopies } from "../../../src/notebook/share/compare-copies.ts";
import { columnTableFromEmbedded, embeddedTable } from "../../../src/notebook/share/embedded-table.ts";
import { withheldColumns } from "../../../src/notebook/share/withheld-columns.ts";
import { smallCopy } from "./small-copy.ts";

const tableFrom = (text: string) => {
  const [read] = readTable(new TextEncoder().encode(text), "tops.csv").tables;
  if (!read) throw new Error("no table");
  return columnsFromTable(read, "tops.csv", "tops", {
    oneRowPer: "board",
    repeats: [{ name: "h", columns: ["h1", "h2", "h3"] }],
    columns: { h1: { uncertainty: "0.02 mm" } },
  });
};
const csv =
  "board,species,h1 (mm),h2 (mm),h3 (mm)\nB-1,cedar,2.311,2.4,2.35\nB-2,spruce,2.1,2.2,2.15\nB-1,,2.322,2.25,2.15\nB-3,spruce,2,,\n";
const table = tableFrom(csv);
const embedded = JSON.parse(JSON.stringify(embeddedTable(table)));
const restored = columnTableFromEmbedded(embedded);

it("columns come back with their values, uncertainty and what each reading adds", () => {
  expect([...restored.columns.keys()]).toEqual(["board", "species", "h1", "h2", "h3", "h"]);
  expect([...restored.columns.values()]).toEqual([...table.columns.values()]);
});
it("each value leads to the same raw cells as before, and shows the same one", () => {
  for (const name of table.columns.keys())
    for (let row = 0; row < table.rowCount; row++) {
      expect(cellsBehind(restored, name, row)).toEqual(cellsBehind(table, name, row));
      expect(restored.cellAt(name, row)).toEqual(table.cellAt(name, row));
    }
  expect(cellsBehind(restored, "h1", 0).map(({ raw }) => raw)).toEqual(["2.311", "2.322"]);
  expect(restored.cellAt("species", 0)?.raw).toBe("cedar");
});
it("going in again changes nothing", () => expect(embeddedTable(restored)).toEqual(embedded));

const held = (...without: string[]) => {
  const kept = withheldColumns({ notebookText: "", file: "n.md", tables: new Map([["tops", table]]), without });
  const own = kept.tables.get("tops");
  if (!own) throw new Error("no table");
  return { kept, text: JSON.stringify(embeddedTable(own)) };
};
it("a reading held back takes the mean with it, and the mean its readings", () => {
  for (const without of ["h1", "h"]) {
    const { kept, text } = held(without);
    expect([...(kept.tables.get("tops")?.columns.keys() ?? [])]).toEqual(["board", "species"]);
    expect(text).not.toContain("2.311");
    expect(text).not.toContain("2.322");
  }
});
it("a table without the column leads to none of its readings either", () =>
  expect(cellsBehind(held("h1").kept.tables.get("tops") ?? table, "h1", 0)).toEqual([]));
it("a reading quoted in the prose is pointed out", () => {
  const { warnings } = withheldColumns({
    notebookText: "It read 2.322 then.\n",
    file: "n.md",
    tables: new Map([["tops", table]]),
    without: ["h1"],
  });
  expect(warnings.map(({ code }) => code)).toEqual(["prose-mentions"]);
});
it("one reading that changed is a change between two copies", () => {
  const copyOf = (text: string) => ({ ...smallCopy(), tables: [embeddedTable(tableFrom(text))] });
  expect(compareCopies(copyOf(csv), copyOf(csv.replace("2.322", "2.323"))).changes).toEqual([
    { entry: "tops", what: "h1 of B-1", before: '"2.311; 2.322"', after: '"2.311; 2.323"' },
  ]);
});

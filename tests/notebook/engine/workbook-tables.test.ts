// `from FILE sheet "NAME" table N` over a workbook: which table of which sheet a notebook means.
import { expect, it } from "vitest";
import { createNotebookEngine } from "../../../src/notebook/engine/index.ts";
import { xlsxFile, xlsxRows } from "../../core/records/sheets/workbook-file.ts";

const shop = xlsxFile({
  sheets: [
    {
      name: "tops old",
      rows: xlsxRows([
        ["top", "mass (g)"],
        ["T-0", 140],
      ]),
    },
    {
      name: "tops",
      rows: xlsxRows([["top", "mass (g)"], ["T-1", 150], [], ["bridge", "height (mm)"], ["BR-1", 9.5]]),
    },
  ],
});

/** Texts of the first column's cells, or the problems met. */
async function found(from: string) {
  const engine = createNotebookEngine({
    readFile: async (path) => (path === "shop.xlsx" ? shop : null),
    schedule: setImmediate,
    asOf: null,
    version: "test",
  });
  engine.update(`\`\`\`records pieces\n${from}\n\`\`\`\n`, "shop.md");
  await engine.settled();
  const { entries, problems } = engine.result();
  const view = entries[0]?.view;
  if (problems.length > 0 || view?.kind !== "table") return problems.map(({ code }) => code);
  return view.rows.map(({ cells }) => cells[0]?.reading);
}

it.each([
  ["from shop.xlsx", ["T-0"]],
  ["from shop.xlsx table 2", ["T-1"]],
  ['from shop.xlsx sheet "tops"', ["T-1"]],
  ['from shop.xlsx sheet "tops" table 2', ["BR-1"]],
  ['from shop.xlsx sheet "tops old"', ["T-0"]],
  ['from shop.xlsx sheet "tops" table 3', ["unknown-table"]],
  ['from shop.xlsx sheet "top"', ["unknown-table"]],
])("%s", async (from, texts) => {
  expect(await found(from)).toEqual(texts);
});

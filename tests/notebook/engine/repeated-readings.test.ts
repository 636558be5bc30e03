// Repeated readings from the bytes of the files to the answer and back to each raw cell.
import { expect, it } from "vitest";
import type { Trace } from "../../../src/core/base/index.ts";
import { shopEngine } from "./small-shop.ts";

const boards = Array.from({ length: 9 }, (_, i) => `B-${i + 1}`);
const csv = [
  "board,thickness 1 (mm),thickness 2 (mm),thickness 3 (mm),stiffness (GPa)",
  ...boards.flatMap((board, i) =>
    [0, 1].map((k) => {
      const thick = 2.2 + i * 0.05 + k * 0.02;
      return `${board},${thick.toFixed(2)},${(thick + 0.03).toFixed(2)},${(thick - 0.02).toFixed(2)},${(12 - i * 0.3 + (i % 2) * 0.4 + k * 0.1).toFixed(1)}`;
    }),
  ),
].join("\n");
const columns = ["thickness 1", "thickness 2", "thickness 3"];
const files = (about: object) => ({ "records/tops.csv": csv, "records/tops.about.json": JSON.stringify(about) });
const notebook = (lines: string, question: string, roles = "piece is board") =>
  `\`\`\`records tops\nfrom records/tops.csv\n${roles}\n\`\`\`\n\n\`\`\`columns tops\n${lines}\n\`\`\`\n\n\`\`\`question slope\n${question}\n\`\`\`\n`;

async function answered(text: string, about: object = {}) {
  const engine = await shopEngine(text, files(about));
  const { entries, problems } = engine.result();
  expect(problems.map(({ sentence }) => sentence)).toEqual([]);
  return { engine, entries, finding: entries.find(({ name }) => name === "slope")?.finding };
}

const cellsOf = (trace: Trace | null) => trace?.steps.flatMap(({ cells = [] }) => cells) ?? [];
const described = { repeats: [{ name: "thickness", columns }], oneRowPer: "board" };

it("readings in columns and rows become one value a piece: nine pieces, not eighteen readings", async () => {
  const { finding } = await answered(notebook("double = thickness * 2 in mm", "double against stiffness"), described);
  expect(finding?.kind === "relation" && finding.rows.used.map(({ piece }) => piece)).toEqual(boards);
});
it("its trace leads to every raw cell: two rows of three thicknesses and a stiffness a piece", async () => {
  const { engine, finding } = await answered(
    notebook("double = thickness * 2 in mm", "double against stiffness"),
    described,
  );
  const cells = cellsOf(engine.trace("slope"));
  expect(cells).toHaveLength(9 * 2 * 4);
  expect(new Set(cells.map(({ row, col }) => `${row}/${col}`)).size).toBe(9 * 2 * 4);
  expect(cellsOf(finding?.kind === "relation" ? finding.trace : null)).toHaveLength(9 * 2 * 4);
});
it("the grid shows the mean with its uncertainty, and how it was made", async () => {
  const { entries } = await answered(notebook("double = thickness * 2 in mm", "double against stiffness"), described);
  const view = entries[0]?.view;
  if (view?.kind !== "table") throw new Error("no table");
  expect(view.columns.at(-1)?.formula).toBe("mean(thickness_1, thickness_2, thickness_3)");
  // B-1: 2.21, 2.24, 2.19 mm (means of two): mean 2.2133, spread 0.02517 / sqrt 3 = 0.01453, own 0.01 / sqrt 3: 0.0156
  expect(view.rows[0]?.cells.at(-1)?.reading).toBe("2.213 ± 0.016 mm");
});
it("the same mean written in the notebook is the same value, and they cancel", async () => {
  const { entries } = await answered(
    notebook("rest = mean(thickness_1, thickness_2, thickness_3) - thickness  in mm", "rest against stiffness"),
    described,
  );
  const view = entries.find(({ kind }) => kind === "columns")?.view;
  expect(view?.kind === "table" && view.rows.map(({ cells }) => cells.at(-1)?.reading)).toEqual(
    boards.map(() => "0 mm"),
  );
});
it("mean of X by piece leads to every reading of the pieces used, also those that a condition leaves out", async () => {
  const { engine } = await answered(
    notebook("thick = mean of thickness_1 by board", "thick against stiffness where thickness_1 < 2.46 mm"),
  );
  const cells = cellsOf(engine.trace("slope"));
  const used = new Set(cells.filter(({ column }) => column === "stiffness").map(({ row }) => row));
  const readings = cells.filter(({ column }) => column === "thickness_1").map(({ row }) => row);
  // B-6 was read 2.45 and 2.47 mm: the condition keeps its first row, the mean has both.
  expect([...used]).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
  expect(readings).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
});
it("a record joined to several is no separate evidence twice, and its cells are named once", async () => {
  const guitars = [
    "board,player",
    "B-1,x",
    "B-1,y",
    ...boards.slice(1, 8).map((board) => `${board},z`),
    "B-77,lost",
  ].join("\n");
  const engine = await shopEngine(
    "```records tops\nfrom records/tops.csv\njoin records/guitars.csv on board\npiece is board\n```\n\n```question slope\nthickness against stiffness\n```\n",
    { ...files(described), "records/guitars.csv": guitars },
  );
  const { entries } = engine.result();
  const finding = entries.find(({ name }) => name === "slope")?.finding;
  expect(finding?.kind === "relation" && finding.cautions.map(({ code }) => code)).toContain("pieces-share");
  expect(cellsOf(engine.trace("slope"))).toHaveLength(9 * 2 * 4);
  const notes = entries[0]?.table?.notes.join("\n");
  expect(notes).toContain(
    "One record of records/guitars.csv has no match in records/tops.csv and is not in this table: B-77.",
  );
  expect(notes).toContain("One record of records/tops.csv has no match in records/guitars.csv");
});

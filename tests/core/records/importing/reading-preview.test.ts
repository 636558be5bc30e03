import { expect, it } from "vitest";
import { readingPreview } from "../../../../src/core/records/importing/reading-preview.ts";
import { readTable } from "../../../../src/core/records/read-table.ts";

const preview = (text: string, rawOf?: (record: number) => string) =>
  readingPreview(readTable(new TextEncoder().encode(text), "tops.csv"), rawOf);

it("shows raw beside read, with each warning under its cell", () => {
  const [table] = preview("Piece,Mass (g)\nA,4O\nB,12\nC,13\n").tables;
  expect(table?.rows.map(({ cells }) => cells[1])).toMatchObject([
    { raw: "4O", reading: "not readable", warning: { code: "letter-in-number" } },
    { raw: "12", reading: "12 g" },
    { raw: "13", reading: "13 g" },
  ]);
});

it("shows the first fifty rows and, however far down, every row with a warning", () => {
  const rows = Array.from({ length: 500 }, (_, i) => (i === 450 || i === 471 ? `P${i},4O` : `P${i},${i}`));
  const [table] = preview(["Piece,Mass (g)", ...rows].join("\n")).tables;
  expect(table?.rowCount).toBe(500);
  expect(table?.rows.map(({ row }) => row)).toEqual([...Array.from({ length: 50 }, (_, i) => i + 1), 451, 472]);
});

it("counts every warning by its code, and says where each is", () => {
  const rows = Array.from({ length: 300 }, (_, i) => `P${i},${i % 2 ? "4O" : i}`);
  const { warnings, warningCount } = preview(["Piece,Mass (g)", ...rows].join("\n"));
  expect(warningCount).toBe(150);
  expect(warnings).toMatchObject([{ code: "letter-in-number", count: 150 }]);
  expect(warnings[0]?.places.slice(0, 2)).toEqual([
    { table: 1, row: 2, col: 2 },
    { table: 1, row: 4, col: 2 },
  ]);
  expect(warnings[0]?.places).toHaveLength(150);
});

it("shows what was set aside with its text and why", () => {
  const { setAside } = preview(
    "Tops of spring\n\nPiece,Mass (g)\nA,12\nB,13\nTotal,25\n",
    (record) => `text ${record}`,
  );
  expect(setAside).toEqual([
    { place: "record 1", sentence: "A line above the heading.", raw: "text 1" },
    { place: "record 6", sentence: "A total or a mean; it is no record.", raw: "text 6" },
  ]);
});

it("stays light: a wide table shows fewer rows, a long cell is cut with a mark", () => {
  const wide = `${Array.from({ length: 2000 }, (_, i) => `c${i} word`).join(",")}\n`;
  const row = `${Array.from({ length: 2000 }, () => "x").join(",")}\n`;
  const [table] = preview(wide + row.repeat(60)).tables;
  expect(table!.rows.length * table!.columns.length).toBeLessThanOrEqual(20_000);
  const [long] = preview(`Piece,Remark\nA,${"x".repeat(1000)}\n`).tables;
  expect(long?.rows[0]?.cells[1]?.raw).toBe(`${"x".repeat(500)}…`);
});

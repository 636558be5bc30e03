// What the description of a table says is minded while reading. Source of `missingValues`: Frictionless Table Schema 1, "Missing values".
import { expect, it } from "vitest";
import { readTable } from "../../../src/core/records/index.ts";
import { rowsOf } from "../../support/rows-of.ts";

const read = (content: string, said: Parameters<typeof readTable>[3]) => {
  const [table] = readTable(new TextEncoder().encode(content), "x.csv", {}, said).tables;
  return { columns: table?.columns ?? [], cells: (table ? rowsOf(table) : []).map((row) => row.at(-1)) };
};

it("counts the maker's missing values as blanks, whatever they are elsewhere", () => {
  const { cells } = read("board,mass (g)\nA,2.5\nB,-1\nC,lost\nD,-\n", { missingValues: ["-1", "lost"] });
  expect(cells.map((cell) => [cell?.kind, cell?.raw])).toEqual([
    ["quantity", "2.5"],
    ["blank", "-1"],
    ["blank", "lost"],
    ["blank", "-"],
  ]);
});

it("counts them in columns of names and of words too", () => {
  expect(read("mass (g),board\n1,A-1\n2,X-0\n", { missingValues: ["X-0"] }).cells[1]).toMatchObject({ kind: "blank" });
  const words = read("board,species\nA,spruce\nB,unknown\n", { missingValues: ["unknown"] }).cells;
  expect(words.map((cell) => cell?.kind)).toEqual(["text", "blank"]);
});

it("lets a described kind stand in place of the evidence", () => {
  const numbers = read("piece,number\nA,7\nB,8\n", { columns: { number: { kind: "quantity" } } });
  expect(numbers.columns[1]?.kind).toBe("quantity");
  expect(numbers.cells[0]).toMatchObject({ kind: "quantity", value: 7 });
  const names = read("piece,shelf\nA,7.50\nB,8\n", { columns: { shelf: { kind: "text" } } });
  expect(names.cells.map((cell) => cell?.value)).toEqual(["7.50", "8"]);
  expect(read("piece,made\nA,lost\nB,gone\n", { columns: { made: { kind: "date" } } }).cells[0]).toMatchObject({
    kind: "unreadable",
    code: "unreadable-date",
  });
});

it("takes a described unit where the file names none, and the file's where it does", () => {
  const said = { columns: { mass: { unit: "g" } } };
  expect(read("board,mass\nA,2.5\nB,3 kg\n", said).cells).toMatchObject([
    { value: 2.5, unit: "g" },
    { value: 3, unit: "kg", code: "unit-differs" },
  ]);
  expect(read("board,mass (kg)\nA,2.5\n", said).cells).toMatchObject([{ value: 2.5, unit: "kg" }]);
});

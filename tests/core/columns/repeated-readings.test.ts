import { expect, it } from "vitest";
import { columnsFromTable, repeatedReadings } from "../../../src/core/columns/index.ts";
import { readTable } from "../../../src/core/records/index.ts";

const tableOf = (text: string) => {
  const [table] = readTable(new TextEncoder().encode(text), "tops.csv").tables;
  if (!table) throw new Error("no table");
  return table;
};
const asked = (text: string) => repeatedReadings(tableOf(text)).map(({ description }) => description);

it.each([
  [
    "numbers",
    "board,thickness 1 (mm),thickness 2 (mm),thickness 3 (mm)",
    "thickness",
    ["thickness 1", "thickness 2", "thickness 3"],
  ],
  ["numbers right behind", "board,h1 (mm),h2 (mm),h3 (mm)", "h", ["h1", "h2", "h3"]],
  [
    "places",
    "board,thickness bass (mm),thickness middle (mm),thickness treble (mm)",
    "thickness",
    ["thickness bass", "thickness middle", "thickness treble"],
  ],
  [
    "places under one head",
    "board,thickness / bass (mm),thickness / middle (mm),thickness / treble (mm)",
    "thickness",
    ["thickness / bass", "thickness / middle", "thickness / treble"],
  ],
  ["numbers with a sign", "board,mass #1 (g),mass #2 (g),mass #3 (g)", "mass", ["mass #1", "mass #2", "mass #3"]],
])("sees readings by %s", (_, head, name, columns) =>
  expect(asked(`${head}\nB-1,2.3,2.4,2.35\nB-2,2.1,2.2,2.15\n`)).toEqual([{ repeats: [{ name, columns }] }]),
);
it("two places are enough where the readings lie close", () =>
  expect(asked("board,depth left (mm),depth right (mm)\nB-1,95,95.5\nB-2,96,96.2\n")).toEqual([
    { repeats: [{ name: "depth", columns: ["depth left", "depth right"] }] },
  ]));
it.each([
  ["unlike names", "board,mass 1 (g),length 2 (g),width 3 (g)\nB-1,2,2,2\n"],
  ["two numbers only", "board,mass 1 (g),mass 2 (g)\nB-1,2,2\nB-2,3,3\n"],
  ["unlike units", "board,h 1 (mm),h 2 (g),h 3 (Hz)\nB-1,2,2,2\n"],
  ["unlike units of like size", "board,h 1 (mm),h 2 (mm),h 3 (g)\nB-1,2,2,2\n"],
  ["modes, which lie apart", "board,f1 (Hz),f2 (Hz),f3 (Hz)\nB-1,98,190,380\nB-2,101,201,395\n"],
  ["modes by name", "board,mode 1 (Hz),mode 2 (Hz),mode 3 (Hz)\nB-1,98,99,100\n"],
  ["six strings", "instrument,string 1 (mm),string 2 (mm),string 3 (mm)\nG-1,3.1,3.1,3.2\n"],
  ["two bouts", "instrument,width upper (mm),width lower (mm)\nG-1,280,370\nG-2,282,366\n"],
  ["no head at all", "1,2.1,2.2,2.3\n2,2.2,2.1,2.2\n"],
  ["years", "board,mass 2021 (g),mass 2022 (g),mass 2023 (g)\nB-1,2,2,2\n"],
  ["grades", "board,grade 1,grade 2,grade 3\nB-1,3/5,4/5,3/5\n"],
])("raises no false alarm on %s", (_, text) => expect(asked(text)).toEqual([]));

const rows = "B-1,2.3\nB-1,2.4\nB-2,2.2\nB-2,2.1\nB-3,2.5\n";
it("sees several rows a piece, and says how many", () => {
  const [question] = repeatedReadings(tableOf(`board id,thickness (mm)\n${rows}`));
  expect(question?.description).toEqual({ oneRowPer: "board id" });
  expect(question?.sentence).toContain("2 of 3 entries of board id stand on several rows");
});
it.each([
  ["a label that repeats", `species,thickness (mm)\n${rows}`],
  ["a batch", `batch,thickness (mm)\n${rows}`],
  ["pieces of which few repeat", "board id,thickness (mm)\nB-1,2.3\nB-1,2.4\nB-2,2.2\nB-3,2.1\nB-4,2.5\n"],
  [
    "pieces of which a third repeats",
    "board id,thickness (mm)\nB-1,2.3\nB-1,2.4\nB-2,2.2\nB-2,2.1\nB-3,2.5\nB-4,2.5\nB-5,2.5\nB-6,2.5\n",
  ],
  [
    "a column that names each row",
    "top id,board id,thickness (mm)\nT-1,B-1,2.3\nT-2,B-1,2.4\nT-3,B-2,2.2\nT-4,B-2,2.5\n",
  ],
  ["nothing that differs", "board id,thickness (mm),side\nB-1,2.3,a\nB-1,2.3,b\nB-2,2.2,a\nB-2,2.2,b\n"],
  [
    "a drying history",
    "board id,date,mass (g)\nB-1,2024-01-02,200\nB-1,2024-03-02,190\nB-2,2024-01-02,210\nB-2,2024-03-02,201\n",
  ],
])("raises no false alarm over rows on %s", (_, text) => expect(asked(text)).toEqual([]));
it("the description it gives is one that columnsFromTable follows", () => {
  const table = tableOf(
    "board id,h1 (mm),h2 (mm),h3 (mm)\nB-1,2.3,2.4,2.35\nB-1,2.1,2.2,2.15\nB-2,2.1,2.2,2.15\nB-2,2,2,2\n",
  );
  const said = Object.assign({}, ...repeatedReadings(table).map(({ description }) => description));
  const made = columnsFromTable(table, "tops.csv", "tops", said);
  expect([made.rowCount, made.columns.has("h")]).toEqual([2, true]);
});

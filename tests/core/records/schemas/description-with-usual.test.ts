import { expect, it } from "vitest";
import { columnsFromTable } from "../../../../src/core/columns/index.ts";
import {
  descriptionFromJson,
  descriptionWithUsual,
  readRecords,
  type TableDescription,
} from "../../../../src/core/records/index.ts";

const head = "Piece,Species,Length (mm),Width (mm),Thickness (mm),Mass (g)\n";
const tablesOf = async (text: string) => (await readRecords(new TextEncoder().encode(text), "t.csv")).tables;
const notesOf = async (text: string, said: TableDescription | null = null) => {
  const tables = await tablesOf(text);
  const [table] = tables;
  if (!table) throw new Error("no table");
  return columnsFromTable(table, "t.csv", "t", descriptionWithUsual(tables, said) ?? undefined).notes;
};

it("asks after a thickness that must have slipped by a factor of a hundred", async () =>
  expect(await notesOf(`${head}T-13,spruce,550,200,3.9,178\nT-14,spruce,550,200,397,178\n`)).toEqual([
    "Thickness of T-14 is 397 mm; usual is 1.5 to 12 mm. Is the unit right?",
  ]));
it("asks once for a column, and counts the rest", async () =>
  expect(await notesOf(`${head}T-1,spruce,550,200,0.4,178\nT-2,cedar,550,200,0.41,178\n`)).toEqual([
    "Thickness of T-1 is 0.4 mm, and 1 more is as far off; usual is 1.5 to 12 mm. Is the unit right?",
  ]));
it("says it in the unit of the column", async () =>
  // 1.5 mm / 25.4 = 0.05906 in, 12 mm / 25.4 = 0.4724 in.
  expect(await notesOf(`${head.replace("s (mm)", "s (in)")}T-1,spruce,550,200,4,178\n`)).toEqual([
    "Thickness of T-1 is 4 in; usual is 0.05906 to 0.4724 in. Is the unit right?",
  ]));
it.each(["0.5", "36", ""])("lets an odd piece be: a thickness of %j mm", async (thickness) =>
  expect(await notesOf(`${head}T-1,spruce,550,200,${thickness},178\n`)).toEqual([]),
);
it("measures a temperature by the width of its range, not by ratios", async () => {
  const room = "Rig,Reference (g),Reading (g),Temperature (°C)\n";
  // 15 to 28 °C, 13 wide: up to 41 °C and down to 2 °C is let be.
  expect(await notesOf(`${room}balance,200,200.8,40\nbalance,200,200.8,3\n`)).toEqual([]);
  expect(await notesOf(`${room}balance,200,200.8,68\n`)).toEqual([
    "Temperature of balance is 68 °C; usual is 15 to 28 °C. Is the unit right?",
  ]);
});
it("lets small values of either sign be where the range begins at nothing", async () => {
  const board = "Piece,Species,Tree,Grain angle (°)\n";
  expect(await notesOf(`${board}A,spruce,S1,-3\nB,spruce,S1,25\n`)).toEqual([]);
  expect(await notesOf(`${board}A,spruce,S1,-33\n`)).toEqual([
    "Grain angle of A is −33°; usual is 0 to 10°. Is the unit right?",
  ]);
});
it("says nothing of a table that has little in common with any schema", async () =>
  expect(await notesOf("Board,Thickness (mm),Colour\nA,397,red\n")).toEqual([]));
it("says nothing of a column in a unit of another kind, or in none", async () => {
  expect(await notesOf(`${head.replace("s (mm)", "s (kg)")}T-1,spruce,550,200,397,178\n`)).toEqual([]);
  expect(await notesOf(`${head.replace("s (mm)", "s")}T-1,spruce,550,200,397,178\n`)).toEqual([]);
});
it("takes a column for a field only if its unit is of the same kind", async () => {
  const columns = descriptionWithUsual(
    await tablesOf(`${head.replace("s (mm)", "s (kg)")}T-1,spruce,550,200,4,178\n`),
    null,
  )?.columns;
  expect(Object.keys(columns ?? {})).toEqual(["Piece", "Species", "Length", "Width", "Mass"]);
});
it("gives meanings, and the maker's own word goes before", async () => {
  const said = { columns: { Thickness: { meaning: "mine", usual: { low: 100, high: 500 } } } };
  const tables = await tablesOf(`${head}T-14,spruce,550,200,397,178\n`);
  const columns = descriptionWithUsual(tables, said)?.columns;
  expect(columns?.Thickness).toEqual({ meaning: "mine", usual: { low: 100, high: 500 } });
  expect(columns?.Width).toEqual({ meaning: "across the grain", usual: { low: 20, high: 250, unit: "mm" } });
  expect(await notesOf(`${head}T-14,spruce,550,200,397,178\n`, said)).toEqual([]);
});
it("leaves a description as it is where no schema has a word to say", async () => {
  const said = { title: "mine" };
  expect(descriptionWithUsual(await tablesOf("a,b\n1,2\n"), said)).toBe(said);
  expect(descriptionWithUsual([], null)).toBeNull();
});
it("takes a usual range from the description beside a table", () => {
  const read = (usual: unknown) =>
    descriptionFromJson(JSON.stringify({ fields: [{ name: "Gauge", usual }], columns: { Width: { usual } } }));
  const usual = { low: 1, high: 2, unit: "mm" };
  expect(read(usual)).toMatchObject({ ok: true, value: { columns: { Gauge: { usual }, Width: { usual } } } });
  expect(read({ low: "1", high: 2 }).ok).toBe(false);
});

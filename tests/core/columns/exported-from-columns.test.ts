import { expect, it } from "vitest";
import { columnsFromTable, exportedFromColumns } from "../../../src/core/columns/index.ts";
import { readTable, type TableDescription } from "../../../src/core/records/index.ts";
import { quantity } from "../../support/table-of.ts";

function exported(text: string, said: TableDescription = {}) {
  const [table] = readTable(new TextEncoder().encode(text), "t.csv").tables;
  if (!table) throw new Error("no table");
  return exportedFromColumns(columnsFromTable(table, "t.csv", "t", said));
}
const shop = `piece,mass (g),f long (Hz),loudness,tap note,finished on,sold,tonal notes
T-1,178.5,72.6,3/5,D2 -20c,2024-05-03,yes,"clear, slow to open"
T-2,0.2 kg,,4/5,A2,2024-06,no,"warm, quick"
T-3,,80,5/5,,,,
`;
const valuesOf = (table: ReturnType<typeof exported>) =>
  Object.fromEntries(table.columns.map(({ name, unit, values }) => [name, [unit, ...values]]));

it("gives each column in one unit, missing as null", () =>
  // A2 is 110 Hz; D2 twenty cents lower is 73.416 * 2^(-20/1200) = 72.573 Hz.
  expect(valuesOf(exported(shop))).toEqual({
    piece: [null, "T-1", "T-2", "T-3"],
    mass: ["g", 178.5, 200, null],
    f_long: ["Hz", 72.6, null, 80],
    loudness: [null, "3", "4", "5"],
    tap_note: [null, "D2 -20c", "A2", null],
    tap_note_frequency: ["Hz", expect.closeTo(72.573, 2), expect.closeTo(110, 9), null],
    finished_on: [null, "2024-05-03", "2024-06", null],
    sold: [null, true, false, null],
    tonal_notes: [null, "clear, slow to open", "warm, quick", null],
  }));
it("gives an uncertainty in a column of its own, in kelvin where the unit is a scale", () => {
  const said = { columns: { mass: { uncertainty: "0.03 g" }, room: { uncertainty: { value: 1, unit: "Cel" } } } };
  const table = exported("piece,mass (g),room (°C)\nA,50,20\nB,,21\n", said);
  expect(valuesOf(table)).toMatchObject({
    mass: ["g", 50, null],
    mass_uncertainty: ["g", 0.03, null],
    room: ["Cel", 20, 21],
    room_uncertainty: ["K", 1, 1],
  });
  expect(table.columns.map((column) => column.kind)).toContain("uncertainty");
});
it("keeps rows that are left out, and says why", () =>
  expect(valuesOf(exported("piece,mass (g)\nA,50\nA,50\n"))).toMatchObject({
    piece: [null, "A", "A"],
    left_out: [null, null, "repeated row"],
  }));
it("writes values with the digits they were written with", () => {
  const written = Array.from({ length: 2000 }, (_, at) => Number((at * 0.0137 + 0.01).toFixed(4)));
  for (const unit of ["mm", "[in_i]", "g", "[lb_av]", "kHz", "Cel", "GPa", "%"]) {
    const column = quantity("x", unit, written);
    const table = {
      name: "t",
      rowCount: written.length,
      columns: new Map([["x", column]]),
      rows: [],
      leftOut: new Map(),
      cellAt: () => null,
      notes: [],
    };
    expect(exportedFromColumns(table).columns[0]?.values).toEqual(written);
  }
});

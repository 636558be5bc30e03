// Workbooks written by the library that writes ours, which shares no code with what reads them: the same cells come back.
import fc from "fast-check";
import { writeOds } from "hucre/ods";
import { writeXlsx } from "hucre/xlsx";
import { expect, it } from "vitest";
import { workbookGrids } from "../../../../src/core/records/sheets/workbook-grids.ts";

type Value = string | number | boolean | null;
const text = fc
  .string({ unit: "grapheme", minLength: 1, maxLength: 12 })
  .filter((one) => !/[\p{Cc}\p{Cs}\uffff\ufffe]|_x/u.test(one) && one.trim() === one && !/ {2}/.test(one));
const value: fc.Arbitrary<Value> = fc.oneof(
  text,
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.integer(),
  fc.boolean(),
  fc.constant(null),
);
const rows = fc.array(fc.array(value, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 8 });

/** What a cell keeps, from its value: the promise of the format. */
function kept(one: Exclude<Value, null>): [string, unknown] {
  if (typeof one === "string") return [one, { as: "text" }];
  if (typeof one === "boolean") return [one ? "TRUE" : "FALSE", { as: "boolean" }];
  return [String(one), { as: "number", value: one, unit: null }];
}

it.each([
  ["XLSX", writeXlsx],
  ["ODS", writeOds],
] as const)("cells written as %s come back as they were", async (_, write) => {
  await fc.assert(
    fc.asyncProperty(rows, async (table) => {
      const grids = await workbookGrids(await write({ sheets: [{ name: "a", rows: table }] }));
      const [grid] = typeof grids === "string" ? [] : grids;
      const wanted = table.flatMap((row, at) =>
        row.flatMap((one, col) => (one === null ? [] : [[at, col, ...kept(Object.is(one, -0) ? 0 : one)]])),
      );
      const found = grid?.raws.map((raw, at) => [grid.rows[at], grid.columns[at], raw, grid.stored[at]]);
      expect(found).toEqual(wanted);
    }),
    { seed: Number(process.env.THUMBRULE_SEED ?? 20260314), numRuns: 100 },
  );
});

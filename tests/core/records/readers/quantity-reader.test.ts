// Numbers in every notation, cell by cell; expected values follow from the notation itself and exact definitions (1 ft = 12 in, 1 lb = 16 oz).

import fc from "fast-check";
import { expect, it } from "vitest";
import { readTable } from "../../../../src/core/records/index.ts";
import { law } from "../../../support/law.ts";
import { rowsOf } from "../../../support/rows-of.ts";

/** The last cell beside plain neighbours which show that the point is decimal. */
function readingOf(cell: string, unit: string | null = "mm") {
  const head = unit === null ? "value" : `value (${unit})`;
  const quoted = `"${cell.replaceAll('"', '""')}"`;
  const rows = unit === null ? ["1.5", "2.5", "3.5", "4.5"] : ["1.5", "2.5"];
  const result = readTable(
    new TextEncoder().encode(`board;${head}\n${rows.map((row, at) => `N${at};${row}`).join("\n")}\nX;${quoted}\n`),
    "x.csv",
  );
  const last = result.tables.flatMap(rowsOf).at(-1)?.[1];
  const { raw: _, kind: __, ...rest } = last ?? { raw: "", kind: "blank" };
  return rest;
}
const value = (cell: string, unit?: string | null) => (readingOf(cell, unit) as { value: number }).value;
const code = (cell: string, unit?: string | null) => (readingOf(cell, unit) as { code?: string }).code;

it.each([
  ["٢٫٥", 2.5],
  ["２．５", null],
  ["１２", 12],
  ["1 250", 1250],
  ["1,234", 1234],
  ["1,234.5", 1234.5],
  ["1.2×10³", 1200],
  ["1.2·10^-3", 0.0012],
  ["+.5", 0.5],
  ["−0.35", -0.35],
  ["1e999", null],
  ["Infinity", null],
  ["", null],
])("reads %j", (cell, expected) => expect(value(cell)).toBe(expected));

it.each([
  ["(12.5)", "unreadable-number"],
  ["12-", "unreadable-number"],
  ["12 34", "unreadable-number"],
  ["1,23,456", "unreadable-number"],
  ["1/3", "unreadable-number"],
  ["3/32", "fraction-without-inch"],
  ["2.3O", "letter-in-number"],
  ["l.25", "letter-in-number"],
  ["7 zorks", "unknown-unit"],
  ["03-Mar", "date-in-number-column"],
  ["1/8/2024", "date-in-number-column"],
  ["=1+1", "formula-like"],
  ["#REF!", "sheet-error"],
  ["ditto", "ditto"],
  ["~2.3", "approximate"],
  ["ca.2.3", "approximate"],
  ["<=0.1", "below-limit"],
  ["> 50", "above-limit"],
  ["2.3?", "doubtful"],
  ["2.3†", "footnote-mark"],
  ["'2.31", "number-as-text"],
  ["2.2 … 2.4", "range"],
  ["2.4 – 2.2", "unreadable-number"],
])("codes %j as %s", (cell, expected) => expect(code(cell)).toBe(expected));

it.each([
  ["2' 1 1/2\"", 25.5],
  ["2 ft 1.5 in", 25.5],
  ["2′ 6″", 30],
  ['7 5/8"', 7.625],
  ["1⅛", 1.125],
  ["⁷⁄₁₆", 0.4375],
  ["2-3/8", 2.375],
])("reads %j in inches", (cell, expected) =>
  expect(readingOf(cell, "in")).toMatchObject({ value: expected, unit: "[in_i]" }),
);
it("reads pounds and ounces, degrees and minutes", () => {
  expect(readingOf("6 lb 3 oz", null)).toMatchObject({ value: 99, unit: "[oz_av]" });
  expect(readingOf("1° 30'", "°")).toMatchObject({ value: 1.5, unit: "deg" });
  expect(readingOf("30'", "°")).toMatchObject({ value: 30, unit: "'", code: "unit-differs" });
});
it("reads uncertainties", () => {
  expect(readingOf("(2.31 ± 0.02) mm")).toEqual({ value: 2.31, unit: "mm", uncertainty: 0.02 });
  expect(readingOf("2.310(12)")).toEqual({ value: 2.31, unit: "mm", uncertainty: 0.012 });
  expect(readingOf("410 ± 2 %")).toMatchObject({ uncertainty: 8.2 });
  expect(readingOf("12 ± 1 %", "%")).toEqual({ value: 12, unit: "%", uncertainty: 1 });
});

law(
  "a number written plainly is read as itself",
  [fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 })],
  (number) => {
    const written = String(number);
    const ambiguous = /^-?[1-9]\d{0,2}\.\d{3}$/.test(written);
    if (!ambiguous && !["-99", "-999", "-9999"].includes(written)) expect(value(written) + 0).toBe(number + 0);
  },
);
law(
  "no text is read as a number that is not finite",
  [
    fc.string({
      unit: fc.constantFrom(..."0123456789.,'’ -–±()/\"°%eEOlmgin~<>?*+×^½⅛⁄⁷₁⁻³\u00a0\u200b"),
      maxLength: 24,
    }),
  ],
  (cell) => {
    const reading = readingOf(cell) as { value: unknown; code?: string };
    if (typeof reading.value === "number") expect(Number.isFinite(reading.value)).toBe(true);
  },
);

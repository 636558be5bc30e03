import { expect, it } from "vitest";
import { readingInWords, readTable } from "../../../src/core/records/index.ts";
import { rowsOf } from "../../support/rows-of.ts";

it("says half a range as it would be written", () => {
  const { tables } = readTable(new TextEncoder().encode("top;thickness (mm)\nA;2,2-2,4\nB;2,31\nC;\n"), "x.csv");
  expect(tables.flatMap(rowsOf).map((row) => row[1] && readingInWords(row[1]))).toEqual([
    "2.3 ± 0.1 mm",
    "2.31 mm",
    "nothing measured",
  ]);
});

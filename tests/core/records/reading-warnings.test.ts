import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { readingInWords, readingWarnings } from "../../../src/core/records/index.ts";

const folder = new URL("../../messy/expected/", import.meta.url);
it("has a sentence for every code of the messy files", () => {
  for (const name of readdirSync(folder)) {
    const { warnings, setAside } = JSON.parse(readFileSync(new URL(name, folder), "utf8")) as {
      warnings: { code: string }[];
      setAside: { code: string }[];
    };
    for (const { code } of [...warnings, ...setAside]) expect(readingWarnings.get(code), code).toMatch(/\.$/);
  }
});
it("says what a cell was read as", () => {
  expect(readingInWords({ raw: "2,31±0,02", kind: "quantity", value: 2.31, unit: "kg/m3", uncertainty: 0.02 })).toBe(
    "2.31 ± 0.02 kg/m³",
  );
  expect(readingInWords({ raw: "4/5", kind: "grade", value: 4, unit: "/5" })).toBe("4 of 5");
  expect(readingInWords({ raw: "n/a", kind: "blank", value: null, unit: null })).toBe("nothing measured");
  expect(readingInWords({ raw: "?!", kind: "unreadable", value: null, unit: null, code: "unreadable-number" })).toBe(
    "not readable",
  );
});

// Whole workbooks against their one right reading, stated by hand from the rules of reading (see tests/messy), never by a program.
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { printedReadResult, readRecords } from "../../../../src/core/records/index.ts";

const folder = new URL("../../../messy/", import.meta.url);
const names = readdirSync(new URL("files/", folder)).filter((name) => /\.(?:xlsx|ods)$/.test(name));

/** Numbers as text of ten digits, so that equal within 1e-9 or so is equal; lists whose order says nothing are sorted. */
const rounded = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, one) => (typeof one === "number" && !Number.isInteger(one) ? one.toPrecision(10) : one)),
  );
const sorted = (list: readonly unknown[]) =>
  list.map((one) => JSON.stringify(Object.entries(one as object).sort(([a], [b]) => (a < b ? -1 : 1)))).sort();

it.each(names)("reads %s as its maker would", async (name) => {
  const expected = JSON.parse(readFileSync(new URL(`expected/${name}.json`, folder), "utf8"));
  const bytes = new Uint8Array(readFileSync(new URL(`files/${name}`, folder)));
  const result = await readRecords(bytes, name, expected.options);
  const printed = JSON.parse([...printedReadResult(result)].join(""));
  expect(rounded(printed.tables)).toEqual(rounded(expected.tables));
  expect(sorted(result.setAside)).toEqual(sorted(expected.setAside));
  expect(sorted(result.warnings)).toEqual(sorted(expected.warnings));
});

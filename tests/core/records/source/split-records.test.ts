import fc from "fast-check";
import papaparse from "papaparse";
import { expect, it } from "vitest";
import { fieldsOf } from "../../../../src/core/records/source/raw-records.ts";
import { splitRecords } from "../../../../src/core/records/source/split-records.ts";
import { law } from "../../../support/law.ts";

const fields = (text: string, delimiter = ",") => {
  const records = splitRecords(text, delimiter);
  return Array.from({ length: records.count }, (_, record) => fieldsOf(records, record));
};

// Expected values: RFC 4180, section 2, rules 1 to 7.
it("splits by RFC 4180", () => {
  expect(fields("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")).toEqual([
    ["aaa", "bbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(fields('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
    ["aaa", "b\r\nbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(fields('"aaa","b""bb","ccc"')).toEqual([["aaa", 'b"bb', "ccc"]]);
});

it("reads a quote that never closes as a character, and ends its record at the line", () => {
  const text = 'a,"b\nc,d\n';
  expect(fields(text)).toEqual([
    ["a", '"b'],
    ["c", "d"],
  ]);
  expect([...splitRecords(text, ",").codes]).toEqual([[1, "unclosed-quote"]]);
});

it("appends what stands after a closing quote", () => {
  expect(fields('"good" but dry,x')).toEqual([["good but dry", "x"]]);
  expect([...splitRecords('"good" but dry,x', ",").codes]).toEqual([[0, "stray-quote"]]);
});

it("keeps an empty quoted field and the empty field after a last delimiter", () =>
  expect(fields('"",a,\n')).toEqual([["", "a", ""]]));

const cell = fc.string({ unit: fc.constantFrom(..."ab 1.,;\t|xé"), maxLength: 6 });
const plain = { quoteChar: '"', header: false, skipEmptyLines: false } as const;
law(
  "splits plain tables as papaparse does",
  [
    fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 8 }),
    fc.constantFrom("\n", "\r\n", "\r"),
    fc.constantFrom(",", ";", "\t", "|"),
    fc.boolean(),
  ],
  (rows, end, delimiter, last) => {
    const text = rows.map((row) => row.join(delimiter)).join(end) + (last ? end : "");
    const { data } = papaparse.parse(text, { ...plain, delimiter, newline: end });
    if (text.endsWith(end)) data.pop(); // The library counts one more record after the last line end.
    expect(fields(text, delimiter)).toEqual(text === "" ? [] : data);
  },
);

const hostile = fc.string({ unit: fc.constantFrom('"', '"', ",", "\n", "\r", " ", "a"), maxLength: 60 });
law("no character is lost but quotes, delimiters, line ends and spaces before a quote", [hostile], (text) => {
  const letters = fields(text).flat().join("");
  expect(letters.replaceAll(/[^a]/g, "").length).toBe(text.replaceAll(/[^a]/g, "").length);
});
law(
  "quoting every field and splitting again is the same table",
  [
    fc.array(
      fc.array(fc.string({ unit: fc.constantFrom('"', ",", "\n", "\r", " ", "a", "é"), maxLength: 8 }), {
        minLength: 2,
        maxLength: 4,
      }),
      { minLength: 1, maxLength: 6 },
    ),
  ],
  (rows) => {
    const text = rows.map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join(",")).join("\n");
    expect(fields(text)).toEqual(rows);
  },
);

// Any bytes at all, and the files of the corpus damaged by chance: a result or a coded refusal, and no raw text lost or changed.
// THUMBRULE_THOROUGH=1 tries 2,000 damaged files of the corpus; otherwise 200, the same each time.
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import { readingWarnings, readRecords, readTable } from "../../src/core/records/index.ts";
import { sourceText } from "../../src/core/records/source/source-text.ts";
import { law } from "../support/law.ts";
import { rowsOf } from "../support/rows-of.ts";

const folder = new URL("../messy/files/", import.meta.url);
const corpus = readdirSync(folder).map((name) => [name, new Uint8Array(readFileSync(new URL(name, folder)))] as const);
const thorough = process.env.THUMBRULE_THOROUGH !== undefined;

const known = (result: ReturnType<typeof readTable>) =>
  [...result.warnings, ...result.setAside].every(({ code }) => readingWarnings.has(code));
const finite = (result: ReturnType<typeof readTable>) =>
  result.tables
    .flatMap(rowsOf)
    .flat()
    .every(({ value, uncertainty }) =>
      [value, uncertainty].every((one) => typeof one !== "number" || Number.isFinite(one)),
    );

law(
  "gives a result with known codes and finite numbers for any bytes",
  [fc.uint8Array({ maxLength: 400 })],
  (bytes) => {
    const result = readTable(bytes, "x.csv");
    return known(result) && finite(result);
  },
);

const awkward = fc.string({
  unit: fc.oneof(
    fc.constantFrom(..." ,;|\t\"'.-+0123456789eE#=/%°µ\u00a0\u2009\u200b\r\n\0\ufffdaOlIH"),
    fc.string({ unit: "binary", minLength: 1, maxLength: 1 }),
  ),
  maxLength: 20,
});
const encoder = new TextEncoder();
const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
const quoted = (field: string) => `"${field.replaceAll('"', '""')}"`;

law(
  "gives back every field as it was written",
  [fc.array(fc.tuple(awkward, awkward), { minLength: 1, maxLength: 12 })],
  (rows) => {
    const lines = rows.map(([a, b], at) => `P${at}\t${quoted(a)}\t${quoted(b)}\tend`);
    const bytes = encoder.encode(["plank\tfirst\tsecond\tlast", ...lines, ""].join("\n"));
    const read = readTable(bytes, "x.tsv", { delimiter: "\t", encoding: "utf-8" });
    const seen = read.tables.flatMap((table) => {
      const at = (name: string) => table.columns.findIndex((column) => column.name === name);
      return rowsOf(table).map((row) => [row[at("first")]?.raw ?? "", row[at("second")]?.raw ?? ""]);
    });
    // The encoder writes half a pair as U+FFFD.
    expect(seen).toEqual(rows.map((fields) => fields.map((field) => decoder.decode(encoder.encode(field)))));
  },
  300,
);

/** Some of the bytes changed, doubled or taken away, once to eight times. */
const damage = fc.array(
  fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.nat(12), fc.uint8Array({ maxLength: 6 })),
  {
    minLength: 1,
    maxLength: 8,
  },
);
function damaged(bytes: Uint8Array, cuts: readonly (readonly [number, number, Uint8Array])[]): Uint8Array {
  let now = Buffer.from(bytes);
  for (const [share, length, piece] of cuts) {
    const at = Math.floor(share * now.length);
    now = Buffer.concat([now.subarray(0, at), piece, now.subarray(at + length)]);
  }
  return new Uint8Array(now);
}

law(
  "reads damaged files of the corpus to known codes, and every raw text stands in the file",
  [fc.constantFrom(...corpus), damage],
  ([name, bytes], cuts) => {
    const spoilt = damaged(bytes, cuts);
    const result = readTable(spoilt, name);
    expect([known(result), finite(result)]).toEqual([true, true]);
    const { text } = sourceText(spoilt);
    const stands = (raw: string) => text.includes(raw) || text.includes(raw.replaceAll('"', '""'));
    for (const { raw, code } of result.tables.flatMap(rowsOf).flat())
      if (code !== "stray-quote" && code !== "bad-character") expect(stands(raw), JSON.stringify(raw)).toBe(true);
  },
  thorough ? 2000 : 200,
);

it("reads no part of a damaged workbook wrongly enough to throw", { timeout: 600_000 }, async () => {
  for (const [name, bytes] of corpus.filter(([name]) => /\.(?:xlsx|ods)$/.test(name)))
    for (let at = 0; at < bytes.length; at += thorough ? 13 : 397) {
      const spoilt = bytes.slice();
      spoilt[at] = (spoilt[at] ?? 0) ^ 0x5a;
      expect((await readRecords(spoilt, name)).file).toBe(name);
    }
});

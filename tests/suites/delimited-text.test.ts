// Other people's cases of delimited text and of Unicode, from the folder that THUMBRULE_SUITES names; without it these are skipped, and say so.
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readTable } from "../../src/core/records/index.ts";
import { rowsOf } from "../support/rows-of.ts";

const folder = process.env.THUMBRULE_SUITES ?? "";
const here = (name: string) => folder !== "" && existsSync(join(folder, name));
const suite = (name: string) => (here(name) ? describe : describe.skip);
const said = (name: string) => (here(name) ? name : `${name}: not here, set THUMBRULE_SUITES`);
const json = (path: string) => JSON.parse(readFileSync(join(folder, path), "utf8"));

type SplitCase = {
  readonly description: string;
  readonly input: string;
  readonly config?: { readonly delimiter?: unknown; readonly newline?: unknown };
  readonly expected: { readonly data: readonly (readonly string[])[]; readonly errors: readonly { code: string }[] };
};

/** Spaces around quotes, comments, a single field after a blank record, a mark, mixed line ends: settled by our own rules. */
const OTHERWISE = [
  /, "|"[ \t]+(?:,|\r|\n|$)/,
  /(?:^|\n)#|^\ufeff/,
  /\n\n[^,\n]+(?:\n|$)/,
  /\r(?!\n)[\s\S]*\n|(?:^|[^\r])\n[\s\S]*\r/,
];

/** Whether the case asks for nothing but what we offer, and for nothing that our rules settle otherwise on purpose. */
function isOurs({ description, config = {}, input, expected }: SplitCase): boolean {
  const { delimiter = ",", newline: _, ...others } = config;
  return (
    !description.includes("guessed") &&
    Object.keys(others).length === 0 &&
    typeof delimiter === "string" &&
    [",", "\t", ";", "|"].includes(delimiter) &&
    expected.data.every(Array.isArray) &&
    !OTHERWISE.some((pattern) => pattern.test(input))
  );
}

suite("csv-parse-cases")(said("csv-parse-cases"), () => {
  const groups: Record<string, readonly SplitCase[]> = here("csv-parse-cases")
    ? json("csv-parse-cases/cases.json").groups
    : {};
  const cases = ["core-parser", "parse"].flatMap((group) => groups[group] ?? []).filter(isOurs);
  it.each(cases.map((each) => [each.description, each] as const))("splits: %s", (_, { input, config, expected }) => {
    const delimiter = String(config?.delimiter ?? ",");
    // A first row of numbers, wider than any other: so there is no header, and every record of the case is a row.
    const first = Array.from({ length: 12 }, (_, at) => at + 1).join(delimiter);
    const ending = input.includes("\r\n") ? "\r\n" : input.includes("\r") && !input.includes("\n") ? "\r" : "\n";
    const result = readTable(new TextEncoder().encode(first + ending + input), "case.csv", { delimiter });
    const codes = result.warnings.map(({ code }) => code);
    if (expected.errors.some(({ code }) => code.endsWith("Quotes")))
      return expect(codes.some((code) => code === "stray-quote" || code === "unclosed-quote")).toBe(true);
    const rows = result.tables.flatMap(rowsOf).slice(1);
    const filled = expected.data.filter((fields) => fields.some((field) => field.trim() !== ""));
    expect(rows.map((row) => row.map(({ raw }) => raw))).toEqual(
      filled.map((fields) => Array.from({ length: 12 }, (_, at) => fields[at] ?? "")),
    );
  });
  it("has enough cases of ours", () => expect(cases.length).toBeGreaterThan(60));
});

suite("unicode")(said("unicode"), () => {
  const cases: { source: string; nfc: string }[] = here("unicode") ? json("unicode/normalization.json").cases : [];
  it("composes every text as the standard says", () => {
    for (const { source, nfc } of cases) {
      const bytes = new TextEncoder().encode(`plank\tremark\nA\tx${source}x\n`);
      const cell = readTable(bytes, "case.tsv").tables.flatMap(rowsOf)[0]?.[1];
      expect([cell?.raw, cell?.value], JSON.stringify(source)).toEqual([`x${source}x`, `x${nfc}x`.normalize("NFC")]);
      expect(cell?.value).toBe(`x${nfc}x`);
    }
    expect(cases.length).toBeGreaterThan(600);
  });
});

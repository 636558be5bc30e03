// Other people's test data, run from the folder that THUMBRULE_SUITES names; without it these are skipped, and say so.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { descriptionFromJson, readTable } from "../../src/core/records/index.ts";
import { rowsOf } from "../support/rows-of.ts";

const folder = process.env.THUMBRULE_SUITES ?? "";
const here = (name: string) => folder !== "" && existsSync(join(folder, name));
const suite = (name: string) => (here(name) ? describe : describe.skip);
const said = (name: string) => (here(name) ? name : `${name}: not here, set THUMBRULE_SUITES`);

suite("csv-spectrum")(said("csv-spectrum"), () => {
  const names = here("csv-spectrum") ? readdirSync(join(folder, "csv-spectrum/csvs")) : [];
  it.each(names)("reads %s cell by cell as its JSON says", (name) => {
    const bytes = readFileSync(join(folder, "csv-spectrum/csvs", name));
    const wanted = JSON.parse(readFileSync(join(folder, "csv-spectrum/json", name.replace(".csv", ".json")), "utf8"));
    const records: Record<string, string>[] = Array.isArray(wanted) ? wanted : [wanted];
    const cells = readTable(bytes, name)
      .tables.flatMap(rowsOf)
      .map((row) => row.map((cell) => cell.raw.replace(/\r\n/g, "\n")));
    expect(cells).toEqual(records.map((record) => Object.values(record).map((text) => text.replace(/\r\n/g, "\n"))));
  });
});

type JsonCase = { name: string; expect: "accept" | "refuse" | "either"; base64: string };

suite("json-parsing")(said("json-parsing"), () => {
  const cases: JsonCase[] = here("json-parsing")
    ? JSON.parse(readFileSync(join(folder, "json-parsing/cases.json"), "utf8")).cases
    : [];
  const strict = (base64: string): string | null => {
    try {
      return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(Buffer.from(base64, "base64"));
    } catch {
      return null;
    }
  };
  it("never throws on a description, and calls nothing JSON that is not", () => {
    for (const each of cases) {
      const text = strict(each.base64);
      if (text === null) continue;
      const outcome = descriptionFromJson(text);
      const reason = outcome.ok ? "" : String((outcome.refusal.facts as { reason?: string }).reason);
      if (each.expect === "refuse") expect(outcome.ok, each.name).toBe(false);
      if (each.expect === "accept") expect(reason, each.name).not.toBe("it is not JSON");
    }
    expect(cases.length).toBeGreaterThan(300);
  });
});

suite("naughty-strings")(said("naughty-strings"), () => {
  const texts: string[] = here("naughty-strings")
    ? JSON.parse(readFileSync(join(folder, "naughty-strings/blns.json"), "utf8"))
    : [];
  it("keeps every naughty string as the raw text of its cell", () => {
    const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
    const lines = texts.map((text, at) => `N-${at},${quoted(text)}`);
    const read = readTable(new TextEncoder().encode(["id,note", ...lines].join("\n")), "naughty.csv");
    expect(read.tables.flatMap(rowsOf).map((row) => row[1]?.raw)).toEqual(texts);
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });
});

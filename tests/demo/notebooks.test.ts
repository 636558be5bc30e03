// The notebooks of the demo, as text: every entry is understood, and every unit in it is known.
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { notebookFromText } from "../../src/notebook/language/index.ts";

const folder = new URL("../../notebooks/", import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith(".md") && name !== "README.md");

describe("the demo's notebooks", () => {
  it("are one for each of the four uses", () =>
    expect(names.sort()).toEqual(["first-day.md", "rig.md", "species.md", "stiffer-tops.md"]));
  for (const name of names)
    it(`${name} is understood to the last entry`, () => {
      const notebook = notebookFromText(readFileSync(new URL(name, folder), "utf8"), name);
      expect(notebook.problems).toEqual([]);
      expect(notebook.entries.length).toBeGreaterThan(2);
      for (const entry of notebook.entries) {
        expect({ name: entry.name, problems: entry.problems }).toEqual({ name: entry.name, problems: [] });
        expect(entry.syntax).not.toBeNull();
      }
    });
  it("read only files that are there", () => {
    const records = new Set(readdirSync(new URL("records/", folder)).map((name) => `records/${name}`));
    for (const name of names) {
      const text = readFileSync(new URL(name, folder), "utf8");
      for (const [file] of text.matchAll(/records\/[\w-]+\.csv/g)) expect(records).toContain(file);
    }
  });
});

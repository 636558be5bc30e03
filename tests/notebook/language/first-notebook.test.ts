import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { columnsFromTable } from "../../../src/core/columns/index.ts";
import { readRecords } from "../../../src/core/records/index.ts";
import { createNotebookEngine } from "../../../src/notebook/engine/index.ts";
import { columnSketches } from "../../../src/notebook/language/column-sketches.ts";
import { firstNotebook } from "../../../src/notebook/language/first-notebook.ts";

const root = new URL("../../../", import.meta.url);
const sourceOf = (text: string, file = "records/tops.csv") => ({ file, bytes: new TextEncoder().encode(text) });

/** The notebooks of a file's tables, and what checking each finds. */
async function begun({ file, bytes }: ReturnType<typeof sourceOf>) {
  const { tables } = await readRecords(bytes, file);
  return Promise.all(
    tables.map(async (table, index) => {
      const columns = columnSketches(columnsFromTable(table, file, "table"));
      const text = firstNotebook({ file, columns, ...(tables.length > 1 ? { table: index + 1 } : {}) });
      const engine = createNotebookEngine({
        readFile: async (path) => (path === file ? bytes : null),
        schedule: setImmediate,
        asOf: null,
        version: "0",
      });
      engine.update(text, "first-look.md");
      await engine.settled();
      const { problems, entries } = engine.result();
      engine.dispose();
      return { text, problems, finding: entries.find(({ kind }) => kind === "question")?.finding };
    }),
  );
}
const sentenceIn = (text: string) => /```question first-look\n(.*)\n/.exec(text)?.[1];
const asks = async (text: string, file?: string) => {
  const [first] = await begun(sourceOf(text, file));
  expect(first?.problems).toEqual([]);
  return sentenceIn(first?.text ?? "");
};
const rows = (heading: string, row: (i: number) => string) =>
  [heading, ...Array.from({ length: 12 }, (_, i) => row(i))].join("\n");

it("asks a thickness that came out against a stiffness", async () => {
  const text = rows(
    "Piece,Species,Thickness (mm),Stiffness along (GPa),Final thickness (mm)",
    (i) => `P${i},${i % 2 ? "cedar" : "spruce"},${4 + i / 10},${9 + i / 10},${2 + i / 100}`,
  );
  expect(await asks(text)).toBe("final_thickness against stiffness_along");
});

it("asks a reading beside its reference", async () => {
  expect(await asks(rows("Rig,Reference (g),Reading (g)", (i) => `balance,${i * 10 + 5},${i * 10 + 5.2}`))).toBe(
    "reading beside reference",
  );
});

it("asks a quantity across a label of a few groups, and not across the names of pieces", async () => {
  const text = rows("Piece,Wood,Mass (g)", (i) => `P${i},${["cedar", "spruce", "cypress"][i % 3]},${100 + i}`);
  expect(await asks(text)).toBe("mass across wood");
});

it("asks one quantity against another where nothing parts the records", async () => {
  expect(await asks(rows("Piece,Mass (g),Tap (Hz)", (i) => `P${i},${100 + i},${80 + i * 2}`))).toBe("mass against tap");
});

it("asks for words where nothing was measured", async () => {
  const text = rows(
    "Instrument,Wood,Notes",
    (i) => `P${i},${i % 2 ? "cedar" : "spruce"},"${i % 2 ? "warm, round" : "bright, dry"} and number ${i}"`,
  );
  expect(await asks(text)).toBe("words of notes across wood");
});

it("asks nothing of columns that cannot answer, and still begins", async () => {
  const [first] = await begun(sourceOf("Piece,Note\nA,\nB,\n"));
  expect(first?.problems).toEqual([]);
  expect(first?.text).toContain("from records/tops.csv");
  expect(sentenceIn(first?.text ?? "")).toBeUndefined();
});

it("puts names that are words of the language, or begin with a digit, in backquotes", async () => {
  const text = rows("Piece,Within,2nd mass (g)", (i) => `P${i},${i % 2 ? "cedar" : "spruce"},${100 + i}`);
  expect(await asks(text)).toBe("`2nd_mass` across `within`");
});

it.each(["records/2024 tops, May.csv", "records/Böden “neu”.csv", "records/***.csv", "records/___.tsv"])(
  "begins with a table called %s",
  async (file) => {
    const gap = file.endsWith("tsv") ? "\t" : ",";
    const text = rows("Piece,Wood,Mass (g)", (i) => `P${i},${i % 2 ? "cedar" : "spruce"},${100 + i}`);
    expect(await asks(text.replaceAll(",", gap), file)).toBe("mass across wood");
  },
);

describe("every open table", () => {
  for (const folder of ["tests/messy/files/", "notebooks/records/"])
    for (const name of readdirSync(new URL(folder, root)).filter((each) => !each.endsWith(".about.json")))
      it(`begins a notebook without a problem: ${name}`, async () => {
        const bytes = new Uint8Array(readFileSync(new URL(folder + name, root)));
        for (const { text, problems } of await begun({ file: `records/${name}`, bytes }))
          expect({ text, problems }).toEqual({ text, problems: [] });
      });
});

it.each(["tops.csv", "earlier-tops.csv", "calliper-checks.csv", "backs.csv"])(
  "the first question of the demo's %s is answered, not refused",
  async (name) => {
    const bytes = new Uint8Array(readFileSync(new URL(`notebooks/records/${name}`, root)));
    const [first] = await begun({ file: `records/${name}`, bytes });
    expect({ asked: sentenceIn(first?.text ?? ""), kind: first?.finding?.kind }).not.toMatchObject({ kind: "refused" });
    expect(first?.finding).toBeDefined();
  },
);

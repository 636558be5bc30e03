// The whole way, with the real engine: records in, copy out, verified from its own bytes alone.
import { expect, it } from "vitest";
import { createNotebookEngine, type NotebookResult } from "../../../src/notebook/engine/index.ts";
import { copyFromEmbedded } from "../../../src/notebook/share/copy-from-embedded.ts";
import { copyLooks, type DatedCopyInput, datedCopy } from "../../../src/notebook/share/dated-copy.ts";
import type { EmbeddedCopy } from "../../../src/notebook/share/embedded-copy.ts";
import { columnTableFromEmbedded } from "../../../src/notebook/share/embedded-table.ts";
import { statedResult } from "../../../src/notebook/share/stated-result.ts";
import { verifyCopy } from "../../../src/notebook/share/verify-copy.ts";
import { digest, document, looks } from "./small-copy.ts";

const species = ["cedar", "cedar", "spruce", "cypress"];
const records = [
  "Top,Species,Mass (g),Stiffness along (GPa),Final thickness (mm)",
  ...Array.from({ length: 24 }, (_, i) => {
    const stiffness = 7 + (i % 8) * 0.7 + (i % 3) * 0.21;
    return `T-${i + 1},${species[i % 4]},${(170 + ((i * 37) % 41)).toFixed(1)},${stiffness.toFixed(2)},${(5.3 * stiffness ** (-1 / 3) + (((i * 29) % 13) - 6) * 0.006).toFixed(3)}`;
  }),
].join("\n");
const notebookText = `---
title: Tops
---
Some *prose*, with <b>markup</b>.

\`\`\`records tops
from records/tops.csv
piece is top
\`\`\`

\`\`\`columns tops
mass_by_thickness = mass / final_thickness in kg/m
\`\`\`

\`\`\`question stiffer
final_thickness against stiffness_along, allowing for species
\`\`\`

\`\`\`question heavier
mass_by_thickness against stiffness_along
\`\`\`

\`\`\`picture both
mass against stiffness_along, by species
\`\`\`
`;
const files = new Map([["records/tops.csv", new TextEncoder().encode(records)]]);

async function computed(text: string, path: string, tables?: DatedCopyInput["tables"]) {
  const engine = createNotebookEngine({
    readFile: async (file) => (tables ? null : (files.get(file) ?? null)),
    asOf: "2026-03-14",
    version: "0.1.0",
    ...(tables ? { tables } : {}),
  });
  engine.update(text, path);
  await engine.settled();
  return { result: engine.result(), tables: engine.tables() };
}
const compute = async (copy: EmbeddedCopy): Promise<NotebookResult> =>
  (
    await computed(
      copy.notebookText,
      copy.result.notebook,
      new Map(copy.tables.map((table) => [table.name, columnTableFromEmbedded(table)])),
    )
  ).result;
const { readerScripts, readerStyle, renderView } = looks;
const shared = async (without: readonly string[] = [], path = "tops.md") => {
  const { result, tables } = await computed(notebookText, path);
  return datedCopy({
    result,
    tables,
    notebookText,
    date: "2026-03-14",
    version: "0.1.0",
    readerScripts: looks.readerScripts,
    readerStyle: looks.readerStyle,
    renderView: looks.renderView,
    document,
    without,
    digest,
    compute,
  });
};
const tools = {
  digest,
  compute,
  version: "0.1.0",
  rebuild: async (copy: EmbeddedCopy, result: NotebookResult) =>
    (await copyFromEmbedded(copy, result, copyLooks({ readerScripts, readerStyle, renderView, document }), digest))
      .html,
};

it("makes a copy that verifies from its own bytes, with the answers in it", async () => {
  const { copy, problems } = await shared();
  expect(problems).toEqual([]);
  expect(copy?.embedded.result.entries.flatMap((entry) => entry.problems)).toEqual([]);
  expect(copy?.html).toMatch(/<svg/);
  expect(copy?.html).toContain("&lt;b&gt;markup&lt;/b&gt;");
  const verification = await verifyCopy(new TextEncoder().encode(copy?.html), tools);
  expect(verification.problems).toEqual([]);
  expect(verification.ok).toBe(true);
});

it("answers in the copy what the notebook answered", async () => {
  const { copy } = await shared();
  const { result } = await computed(notebookText, "tops.md");
  expect(copy?.embedded.result.entries).toEqual(statedResult(result).entries);
});

it("makes the same bytes twice, from another folder too", async () => {
  expect((await shared([], "elsewhere/deep/tops.md")).copy?.html).not.toContain("elsewhere");
  expect((await shared()).copy?.html).toBe((await shared()).copy?.html);
});

it("holds a column back from every byte, and the copy still verifies", async () => {
  const { copy, problems } = await shared(["final_thickness"]);
  expect(problems).toEqual([]);
  const html = copy?.html ?? "final_thickness";
  for (const gone of [
    /final.thickness/i,
    /mass_by_thickness/,
    new RegExp(records.split("\n")[5]?.split(",")[4] ?? "x"),
  ])
    expect(html).not.toMatch(gone);
  expect(html).toContain("One column was held back.");
  expect((await verifyCopy(new TextEncoder().encode(html), tools)).problems).toEqual([]);
});

it("refuses a day that is none", async () => {
  const { result, tables } = await computed(notebookText, "tops.md");
  const outcome = await datedCopy({
    result,
    tables,
    notebookText,
    date: "2026-02-30",
    version: "0.1.0",
    readerScripts: looks.readerScripts,
    readerStyle: "",
    renderView: looks.renderView,
    document,
    without: [],
    digest,
    compute,
  });
  expect(outcome).toMatchObject({ copy: null, problems: [{ code: "bad-date" }] });
});

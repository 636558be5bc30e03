// The edits of a record file in what rests on it: rows that take part, traces, means of readings, and the dated copy.
import { expect, it } from "vitest";
import { runCommand } from "../../../src/cli/run-command.ts";
import type { RecordEdit } from "../../../src/core/records/index.ts";
import { createNotebookEngine } from "../../../src/notebook/engine/index.ts";
import { smallSurface } from "../../cli/small-surface.ts";
import { editedWell, openedSession } from "../../support/edit-session.ts";

const TOPS = `board,stiffness (N m),thickness (mm)
B-1,4.1,2.71
B-2,5.2,2.62
B-3,6.3,2.54
B-4,7.2,2.41
B-5,8.4,2.35
B-6,9.1,9.99
B-7,10.3,2.11
B-8,4.1,unknown secret
`;
const NOTEBOOK = `# Tops

\`\`\`records tops
from records/tops.csv
piece is board
\`\`\`

\`\`\`question thinner
thickness against stiffness
\`\`\`
`;
const cell = (row: number, col: number, before: string, after: string) =>
  ({ what: "cell", table: 1, row, col, before, after }) as const;
const utf8 = (text: string) => new TextEncoder().encode(text);

async function files(table: string, ...edits: readonly RecordEdit[]) {
  const session = await editedWell(await openedSession(utf8(table)), ...edits);
  return { "tops.md": NOTEBOOK, "records/tops.csv": table, "records/tops.csv.edits.jsonl": session.log };
}
async function opened(given: Readonly<Record<string, string>>, notebook = NOTEBOOK) {
  const engine = createNotebookEngine({
    readFile: async (path) => (Object.hasOwn(given, path) ? utf8(given[path] ?? "") : null),
    schedule: setImmediate,
    asOf: null,
    version: "test",
  });
  engine.update(notebook, "tops.md");
  await engine.settled();
  return engine;
}
const EDITS = [
  cell(6, 3, "9.99", "2.25"),
  cell(8, 3, "unknown secret", "2.75"),
  { what: "set-aside", table: 1, row: 7, reason: "warped in store" },
  { what: "add", table: 1, cells: ["B-9", "6.0", "2.5"] },
] as const;

it("answers with what the cells are now, without the rows set aside", async () => {
  const result = (await opened(await files(TOPS, ...EDITS))).result();
  const plain = await opened({
    "records/tops.csv": TOPS.replace("9.99", "2.25")
      .replace("unknown secret", "2.75")
      .replace("B-7,10.3,2.11\n", "")
      .concat("B-9,6.0,2.5\n"),
  });
  const finding = result.entries.find(({ name }) => name === "thinner")?.finding;
  const expected = plain.result().entries.find(({ name }) => name === "thinner")?.finding;
  if (finding?.kind === "refused" || expected?.kind === "refused") throw new Error("refused");
  expect(finding?.estimate.map(({ value }) => value)).toEqual(expected?.estimate.map(({ value }) => value));
  expect(finding?.rows.used).toHaveLength(8);
  expect(finding?.rows.setAside).toEqual([{ row: { table: "tops", row: 7, piece: "B-7" }, why: "warped in store" }]);
  expect(result.problems).toEqual([]);
});

it("traces a cell to what the file has, and says which records are not in it", async () => {
  const given = await files(TOPS, ...EDITS);
  const cells = (await opened(given)).trace("thinner").steps.flatMap((step) => step.cells ?? []);
  const of = (row: number, col: number) => cells.find((each) => each.row === row && each.col === col);
  expect(of(6, 3)).toMatchObject({ raw: "2.25", before: "9.99" });
  expect(of(9, 3)).toMatchObject({ raw: "2.5", before: null });
  expect(of(1, 3)).not.toHaveProperty("before");
  const { stdout } = await runCommand(["trace", "tops.md", "thinner"], smallSurface(given));
  expect(stdout).toContain('"2.25" read as 2.25 mm (edited; the file has "9.99")');
  expect(stdout).toContain('"2.5" read as 2.5 mm (added by an edit)');
});

it("says in the notebook that edits found no place", async () => {
  const given = { ...(await files(TOPS, ...EDITS)), "records/tops.csv": TOPS.replace("9.99", "3.33") };
  const { problems } = (await opened(given)).result();
  expect(problems).toMatchObject([{ code: "edits-unplaced", line: 4, sentence: expect.stringContaining("An edit") }]);
});

it("counts a repeated row once the earlier one is set aside", async () => {
  const twice = TOPS.replace("B-2,5.2,2.62\n", "B-1,4.1,2.71\n");
  const table = async (...edits: readonly RecordEdit[]) => {
    const view = (await opened(await files(twice, ...edits))).result().entries[0]?.view;
    return view?.kind === "table" ? view.rows.slice(0, 2).map(({ setAside }) => setAside) : null;
  };
  expect(await table()).toEqual([undefined, "repeated row"]);
  expect(await table({ what: "set-aside", table: 1, row: 1, reason: "twice" })).toEqual(["twice", undefined]);
});

it("leaves rows set aside out of the mean of their piece", async () => {
  const readings = "board,thickness (mm)\nA,2\nA,4\nB,3\n";
  const given = {
    ...(await files(
      readings,
      { what: "set-aside", table: 1, row: 2, reason: "slipped" },
      {
        what: "set-aside",
        table: 1,
        row: 3,
        reason: "wet",
      },
    )),
    "records/tops.about.json": JSON.stringify({ oneRowPer: "board" }),
  };
  const view = (await opened(given)).result().entries[0]?.view;
  if (view?.kind !== "table") throw new Error("no table");
  expect(view.rows.map(({ piece, setAside }) => [piece, setAside])).toEqual([
    ["A", undefined],
    ["B", "wet"],
  ]);
  expect(view.rows[0]?.cells[1]?.reading).toBe("2 mm");
  expect(view.notes.join(" ")).toMatch(/2 rows are set aside/);
});

it("shows the warning of a cell in words in the notebook's own table", async () => {
  const view = (await opened({ "records/tops.csv": TOPS })).result().entries[0]?.view;
  const cells = view?.kind === "table" ? view.rows.map((row) => row.cells[2]?.warning) : [];
  expect(cells.slice(6)).toEqual([undefined, "This is not a number. Correct the cell."]);
});

it("puts what the cells are now into a dated copy, and nothing of what they were", async () => {
  const surface = smallSurface(await files(TOPS, ...EDITS));
  const { code } = await runCommand(["share", "tops.md", "--date", "2026-03-14", "-o", "tops.html"], surface);
  expect(code).toBe(0);
  const html = [...surface.written.values()].join("");
  expect(html).toContain('"2.75"');
  expect(html).toContain("warped in store");
  for (const gone of ["9.99", "unknown secret", "edits.jsonl"])
    expect([gone, html.includes(gone)]).toEqual([gone, false]);
  const verified = await runCommand(["verify", "tops.html"], surface);
  expect([verified.code, verified.stderr]).toEqual([0, ""]);
});

// The engine as the page, the server and the command line use it.
import fc from "fast-check";
import { expect, it } from "vitest";
import { createNotebookEngine, type NotebookEngine } from "../../../src/notebook/engine/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { readerOf, shopEngine, shopFiles, shopNotebook } from "./small-shop.ts";

const entry = (engine: NotebookEngine, name: string) =>
  engine.result().entries.find((each) => each.name === name && each.kind !== "columns") ??
  engine.result().entries.find((each) => each.name === name);
const problemsOf = (engine: NotebookEngine) =>
  engine.result().problems.map(({ code, line, column, length }) => ({ code, line, column, length }));
const edited = (from: string, to: string) => shopNotebook.replace(from, () => to);
const lineOf = (text: string, found: string) => text.split("\n").findIndex((line) => line.includes(found)) + 1;

it("answers every entry of a notebook without a problem", async () => {
  const engine = await shopEngine();
  expect(engine.result().problems).toEqual([]);
  for (const name of ["slope", "computed", "stiffer-thinner", "balance"])
    expect(entry(engine, name)?.finding, name).toBeDefined();
  expect(entry(engine, "slope")?.finding?.kind).toBe("relation");
  expect(entry(engine, "stiffer-thinner")?.finding?.kind).toBe("verdict");
  expect(entry(engine, "balance")?.finding?.kind).toBe("rig");
});

it("computes only the formula that was edited and what rests on it", async () => {
  const engine = await shopEngine();
  const before = Object.fromEntries(
    ["half_thickness", "double_stiffness", "ratio"].map((name) => [name, engine.runs(`column:tops/${name}`)]),
  );
  const slope = engine.runs("answer:question slope");
  engine.update(edited("stiffness * 2 ", "stiffness * 3 "), "shop.md");
  await engine.settled();
  expect(engine.runs("column:tops/half_thickness")).toBe(before["half_thickness"]);
  expect(engine.runs("column:tops/double_stiffness")).toBe((before["double_stiffness"] ?? 0) + 1);
  expect(engine.runs("column:tops/ratio")).toBe((before["ratio"] ?? 0) + 1);
  expect(engine.runs("answer:question slope")).toBe(slope);
  expect(engine.runs("table:tops")).toBe(1);
});

it("computes nothing when prose is edited, though every line has moved", async () => {
  const engine = await shopEngine();
  const names = [
    "table:tops",
    "column:tops/ratio",
    "answer:question slope",
    "answer:rule stiffer-thinner",
    "rig:balance",
  ];
  const before = names.map(engine.runs);
  engine.update(edited("Prose first.", "Prose first.\n\nAnd more of it.\n"), "shop.md");
  await engine.settled();
  expect(names.map(engine.runs)).toEqual(before);
  expect(entry(engine, "slope")?.line).toBe(lineOf(shopNotebook, "question slope") + 3);
});

it("turns a dial and what depends on it, and nothing else", async () => {
  const engine = await shopEngine();
  const runs = engine.runs("answer:question slope");
  engine.setDial("limit", 0.003);
  await engine.settled();
  closeTo(entry(engine, "twice")?.value?.value ?? 0, 6, 1e-12);
  expect(engine.runs("answer:question slope")).toBe(runs);
  engine.setDial("limit", 99);
  await engine.settled();
  closeTo(entry(engine, "limit")?.value?.value ?? 0, 4, 1e-12);
});

it("places a misspelt column, suggests the right one, and answers the rest", async () => {
  const text = edited("thickness against stiffness, allowing", "thickness against stifness, allowing");
  const engine = await shopEngine(text);
  const [problem] = engine.result().problems;
  expect(problem).toMatchObject({
    code: "unknown-column",
    file: "shop.md",
    line: lineOf(text, "stifness"),
    column: 19,
    length: 8,
    suggestion: "stiffness",
  });
  expect(engine.result().problems).toHaveLength(1);
  expect(entry(engine, "computed")?.finding?.kind).toBe("relation");
});

it("places mm added to GPa, and lets what rests on it wait", async () => {
  const text = edited("stiffness * 2 ", "stiffness + thickness ");
  const engine = await shopEngine(text);
  expect(problemsOf(engine)).toEqual([
    expect.objectContaining({ code: "wrong-dimension", line: lineOf(text, "stiffness + thickness") }),
  ]);
  expect(entry(engine, "computed")?.problems.map((each) => each.code)).toEqual(["waits-for"]);
  expect(entry(engine, "slope")?.finding?.kind).toBe("relation");
});

it("names a ring once, at its first reference, and answers the rest", async () => {
  const text = edited("thickness / 2 ", "ratio / 2 ");
  const engine = await shopEngine(text);
  const found = engine.result().problems;
  expect(found.map((each) => each.code)).toEqual(["ring"]);
  expect(found[0]).toMatchObject({ line: lineOf(text, "ratio / 2") });
  expect(found[0]?.sentence).toContain("half_thickness → ratio → half_thickness");
  expect(entry(engine, "slope")?.finding?.kind).toBe("relation");
});

it("places a missing file and an empty one, and answers what rests on other files", async () => {
  const missing = await shopEngine(shopNotebook, { "records/rig.csv": shopFiles["records/rig.csv"] ?? "" });
  expect(problemsOf(missing)).toEqual([
    expect.objectContaining({ code: "missing-file", line: lineOf(shopNotebook, "from records/tops.csv") }),
  ]);
  expect(entry(missing, "balance")?.finding?.kind).toBe("rig");
  const empty = await shopEngine(shopNotebook, { ...shopFiles, "records/rig.csv": "" });
  expect(problemsOf(empty)).toEqual([
    expect.objectContaining({ code: "empty-file", line: lineOf(shopNotebook, "reading against") }),
  ]);
  expect(entry(empty, "slope")?.finding?.kind).toBe("relation");
});

it("says which line of a description is not understood, and reads the table without it", async () => {
  const files = { ...shopFiles, "records/tops.about.json": '{"columns": {"mass": {"unit": 3}}}' };
  const engine = await shopEngine(shopNotebook, files);
  const tops = engine.result().entries.find((entry) => entry.kind === "records");
  expect(tops?.problems).toMatchObject([
    { code: "description-not-understood", line: lineOf(shopNotebook, "from records/tops.csv") },
  ]);
  expect(tops?.problems[0]?.sentence).toContain("columns/mass/unit");
  expect(tops?.table?.rowCount).toBe(14);
});

it("heals when the mistake is taken back", async () => {
  const engine = await shopEngine(edited("thickness / 2 ", "ratio / 2 "));
  engine.update(shopNotebook, "shop.md");
  await engine.settled();
  expect(engine.result()).toEqual((await shopEngine()).result());
});

it("counts the questions and rules asked of a table, so that an added one is seen by all", async () => {
  const engine = await shopEngine();
  const before = engine.runs("answer:question slope");
  engine.update(`${shopNotebook}\n\`\`\`question more\nmass across species\n\`\`\`\n`, "shop.md");
  await engine.settled();
  expect(entry(engine, "more")?.finding?.kind).toBe("comparison");
  expect(engine.runs("answer:question slope")).toBe(before + 1);
});

it("traces an answer back to the raw cells of its file", async () => {
  const engine = await shopEngine();
  const { steps } = engine.trace("computed");
  expect(steps.find((step) => step.what === "formula")?.formula).toContain("thickness / 2");
  const cells = steps.flatMap((step) => step.cells ?? []);
  expect(cells.find((cell) => cell.row === 1 && cell.column.startsWith("thickness"))).toMatchObject({
    file: "records/tops.csv",
    col: 4,
    raw: "2.300",
  });
});

it("answers the same from tables given in place of files", async () => {
  const engine = await shopEngine();
  const tables = new Map(
    [...engine.tables()].map(([name, table]) => [
      name,
      { ...table, columns: new Map([...table.columns].filter(([, column]) => column.origin.from === "file")) },
    ]),
  );
  const copy = createNotebookEngine({
    readFile: async () => null,
    schedule: setImmediate,
    asOf: null,
    version: "test",
    tables,
  });
  copy.update(shopNotebook, "shop.md");
  await copy.settled();
  expect(copy.result()).toEqual(engine.result());
});

it("tells a listener once for each wave", async () => {
  const engine = await shopEngine();
  let told = 0;
  const stop = engine.subscribe(() => told++);
  engine.setDial("limit", 0.0031);
  await engine.settled();
  await new Promise((done) => setImmediate(done));
  expect(told).toBe(1);
  stop();
  engine.setDial("limit", 0.0032);
  await engine.settled();
  await new Promise((done) => setImmediate(done));
  expect(told).toBe(1);
});

it("reads a file again when it is said to have changed", async () => {
  const files: Record<string, string> = { ...shopFiles };
  const engine = createNotebookEngine({
    readFile: (path) => readerOf(files)(path),
    schedule: setImmediate,
    asOf: null,
    version: "test",
  });
  engine.update(shopNotebook, "shop.md");
  await engine.settled();
  files["records/tops.csv"] = (files["records/tops.csv"] ?? "").split("\n").slice(0, -1).join("\n");
  engine.refresh("records/tops.csv");
  await engine.settled();
  expect(entry(engine, "tops")?.table?.rowCount).toBe(13);
});

it("takes names that objects know as ordinary names", async () => {
  const engine = await shopEngine("```value constructor\n2 mm\n```\n\n```value __proto__\nconstructor * 2\n```\n");
  expect(entry(engine, "__proto__")?.value?.value).toBe(4);
  expect(({} as Record<string, unknown>)["polluted"]).toBe(undefined);
});

const EDITS: readonly (readonly [string, string])[] = [
  ["thickness / 2 ", "thickness / 3 "],
  ["thickness / 2 ", "ratio / 2 "],
  ["stiffness * 2 ", "stiffness + thickness "],
  ["allowing for species", "within species"],
  ["from records/tops.csv", "from records/none.csv"],
  ["2.5 mm  from", "2 mm  from"],
  ["limit * 2 ", "limit * limit "],
  ["Prose first.", ""],
  ["stated 2023-06-01", "stated 2022-01-01"],
  ["leave out piece T-3", "leave out piece T-4"],
  ["half_thickness against", "ratio against"],
  ["```picture\nthickness", "```picture\nmass"],
];

it("comes to the same by any run of edits as from scratch", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.subarray(EDITS as (readonly [string, string])[]), { minLength: 1, maxLength: 5 }),
      async (waves) => {
        const lasting = await shopEngine();
        let text = shopNotebook;
        for (const wave of waves) {
          text = wave.reduce((now, [from, to]) => now.replace(from, () => to), shopNotebook);
          lasting.update(text, "shop.md");
          await lasting.settled();
        }
        const fresh = await shopEngine(text);
        expect(JSON.stringify(lasting.result())).toBe(JSON.stringify(fresh.result()));
        lasting.dispose();
        fresh.dispose();
      },
    ),
    { seed: 20260314, numRuns: 25 },
  );
});

// The command line by its exit codes, its JSON and its text.
import { expect, it } from "vitest";
import { runCommand } from "../../src/cli/run-command.ts";
import { shopFiles, shopNotebook } from "../notebook/engine/small-shop.ts";
import { smallSurface } from "./small-surface.ts";

const files = {
  ...Object.fromEntries(Object.entries(shopFiles).map(([path, text]) => [`shop/${path}`, text])),
  "shop/shop.md": shopNotebook,
};
const run = (args: readonly string[], more: Readonly<Record<string, string>> = {}, lines: readonly string[] = []) =>
  runCommand(args, smallSurface({ ...files, ...more }, lines));
const json = async (args: readonly string[], more: Readonly<Record<string, string>> = {}) => {
  const { code, stdout, stderr } = await run([...args, "--json"], more);
  expect(stderr).toBe("");
  return { code, value: JSON.parse(stdout) as Record<string, never> & { readonly [key: string]: unknown } };
};

it.each([
  [["grind"]],
  [[]],
  [["check"]],
  [["check", "a.md", "b.md"]],
  [["report", "shop/shop.md", "--loud"]],
  [["report", "shop/shop.md", "--as-of", "soon"]],
  [["share", "shop/shop.md"]],
  [["ask", "mass across species"]],
])("takes %j as not understood", async (args) => {
  const { code, stdout, stderr } = await run(args);
  expect([code, stdout]).toEqual([2, ""]);
  expect(stderr).not.toBe("");
});

it("checks a notebook and finds nothing", async () =>
  expect(await json(["check", "shop/shop.md"])).toEqual({ code: 0, value: { problems: [] } }));

it("checks a misspelt column at its place, in text and in JSON", async () => {
  const text = shopNotebook.replace("thickness against stiffness, allowing", "thickness against stifness, allowing");
  const { code, value } = await json(["check", "shop/bad.md"], { "shop/bad.md": text });
  const line = text.split("\n").findIndex((each) => each.includes("stifness")) + 1;
  expect(code).toBe(1);
  expect(value["problems"]).toEqual([
    {
      file: "shop/bad.md",
      line,
      column: 19,
      length: 8,
      code: "unknown-column",
      sentence: expect.any(String),
      suggestion: "stiffness",
    },
  ]);
  const spoken = await run(["check", "shop/bad.md"], { "shop/bad.md": text });
  expect(spoken.stdout).toMatch(new RegExp(`^shop/bad\\.md:${line}:19 unknown-column .*Did you mean stiffness\\?`));
});

it("says that a notebook is missing", async () => {
  const { code, value } = await json(["report", "shop/none.md"]);
  expect(code).toBe(1);
  expect(value["problems"]).toEqual([
    { code: "missing-file", file: "shop/none.md", sentence: expect.stringContaining("shop/none.md") },
  ]);
});

it("reports findings with estimate, interval, rows, cautions and method", async () => {
  const { code, value } = await json(["report", "shop/shop.md", "--as-of", "2026-03-14"]);
  expect(code).toBe(0);
  expect(value).toMatchObject({ notebook: "shop/shop.md", asOf: "2026-03-14", version: "test" });
  const entries = value["entries"] as unknown as {
    readonly name: string;
    readonly finding?: Record<string, unknown>;
  }[];
  const finding = entries.find((entry) => entry.name === "slope")?.finding;
  expect(Object.keys(finding ?? {})).toEqual(
    expect.arrayContaining(["sentence", "estimate", "rows", "checks", "cautions", "method", "trace"]),
  );
});

it("reads a table, refuses what is none, and takes an empty file for what it is", async () => {
  const read = await json(["read", "shop/records/tops.csv"]);
  expect(read.code).toBe(0);
  expect((read.value["tables"] as unknown as { rows: unknown[] }[])[0]?.rows).toHaveLength(14);
  expect((await json(["read", "empty.csv"], { "empty.csv": "" })).code).toBe(0);
  expect((await json(["read", "none.csv"])).code).toBe(1);
  const refused = await json(["read", "picture.csv"], {
    "picture.csv": "\u0000\u0001\u0002\u0003\u0004\u0005\u0006\u0007",
  });
  expect(refused.code).toBe(1);
  expect(refused.value["tables"]).toEqual([]);
});

it("answers one question without a notebook", async () => {
  const { code, value } = await json([
    "ask",
    "thickness against stiffness, allowing for species",
    "--records",
    "shop/records/tops.csv",
  ]);
  expect(code).toBe(0);
  expect((value["finding"] as unknown as { kind: string }).kind).toBe("relation");
  const bad = await json(["ask", "thickness against stifness", "--records", "shop/records/tops.csv"]);
  expect(bad.code).toBe(1);
  expect((bad.value["problems"] as unknown as { code: string; column: number }[])[0]).toMatchObject({
    code: "unknown-column",
    column: 19,
  });
});

it("asks nothing more than the sentence, whatever fences stand in it", async () => {
  const { code, stdout } = await run([
    "ask",
    "mass across species\n```\n```value x\n1",
    "--records",
    "shop/records/tops.csv",
    "--json",
  ]);
  expect(code).toBe(1);
  expect(JSON.parse(stdout)).toHaveProperty("problems");
});

it("traces an answer to raw cells", async () => {
  const { code, value } = await json(["trace", "shop/shop.md", "computed"]);
  expect(code).toBe(0);
  const steps = value["steps"] as unknown as {
    what: string;
    cells?: { file: string; raw: string; row: number; col: number }[];
  }[];
  expect(steps.flatMap((step) => step.cells ?? [])[0]).toMatchObject({ file: "records/tops.csv" });
  expect((await json(["trace", "shop/shop.md", "computd"])).value["problems"]).toEqual([
    expect.objectContaining({ code: "unknown-name", suggestion: "computed" }),
  ]);
});

it("lists every method with source and fields, and runs one by JSON lines", async () => {
  const { value } = await json(["method", "--list"]);
  const list = value as unknown as { id: string; source: { citation: string }; run?: unknown }[];
  expect(list.length).toBeGreaterThan(40);
  expect(list.every((each) => each.source.citation !== "" && !("run" in each))).toBe(true);
  const { stdout, code } = await run(["method"], {}, [
    '{"id": 1, "method": "density", "inputs": {"mass": 0.1824, "length": 0.55, "width": 0.205, "thickness": 0.00402}}',
    "not json",
    '{"id": 3, "method": "none", "inputs": {}}',
    '{"id": 4, "method": "density", "inputs": {"mass": -1}}',
  ]);
  const answers = stdout
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line) as Record<string, unknown>);
  expect(code).toBe(0);
  // 0.1824 kg in 0.55 m x 0.205 m x 4.02 mm, by hand: 402.4 kg/m3.
  expect(Math.abs(Number((answers[0]?.["result"] as { density?: number } | undefined)?.density) - 402.4)).toBeLessThan(
    0.05,
  );
  expect(answers.slice(1).map((answer) => (answer["refused"] as { code: string }).code)).toEqual([
    "not-json",
    "unknown-method",
    expect.any(String),
  ]);
});

it("shares the same bytes twice and verifies them, until one byte is changed", async () => {
  const surface = smallSurface(files);
  const share = (file: string) =>
    runCommand(["share", "shop/shop.md", "-o", file, "--date", "2026-03-14", "--json"], surface);
  const [first, second] = [await share("a.html"), await share("b.html")];
  expect([first.code, second.code], first.stdout).toEqual([0, 0]);
  expect(surface.written.get("a.html")).toBe(surface.written.get("b.html"));
  const whole = await runCommand(["verify", "a.html", "--json"], surface);
  expect([whole.code, JSON.parse(whole.stdout)], whole.stdout).toEqual([
    0,
    expect.objectContaining({ ok: true, problems: [] }),
  ]);
  surface.written.set("c.html", (surface.written.get("a.html") ?? "").replace("A small shop", "A small shoq"));
  expect((await runCommand(["verify", "c.html", "--json"], surface)).code).toBe(1);
  expect(JSON.parse((await runCommand(["compare", "a.html", "b.html", "--json"], surface)).stdout)).toEqual({
    same: true,
    changes: [],
  });
});

it("says the words, the limits and the cautions out of the catalogues", async () => {
  for (const name of ["words", "limits", "cautions"]) {
    expect((await json([name])).code).toBe(0);
    expect((await run([name])).stdout.length).toBeGreaterThan(200);
  }
});

it("reads a file by the description beside it, and tells of one that it does not understand", async () => {
  const table = { "t.csv": 'id,mass (g)\nB-01,"1,234"\nB-02,"1,300"\n' };
  const good = await json(["read", "t.csv"], { ...table, "t.about.json": '{"read":{"decimal":","}}' });
  expect(good).toMatchObject({ code: 0, value: { options: { decimal: "," } } });
  const bad = await json(["read", "t.csv"], { ...table, "t.about.json": '{"version":2}' });
  expect(bad).toMatchObject({
    code: 1,
    value: { tables: [{ name: "t" }], problems: [{ file: "t.about.json", code: "description-not-understood" }] },
  });
});

it("says of an old workbook what to do with it", async () => {
  const surface = smallSurface({});
  surface.bytes.set("old.xls", new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]));
  const { code, stdout } = await runCommand(["read", "old.xls"], surface);
  expect(code).toBe(1);
  expect(stdout).toContain("old-workbook: This is a workbook of the old kind (.xls)");
  expect(stdout).toContain("Save it as .xlsx or CSV");
});

it("refuses a workbook with nothing in it, and JSON, as no tables", async () => {
  const files = { "empty.xlsx": "", "t.json": '{"columns":[]} {"columns":[]}' };
  for (const file of Object.keys(files))
    expect(await json(["read", file], files)).toMatchObject({
      code: 1,
      value: { warnings: [{ code: "not-a-table" }] },
    });
});

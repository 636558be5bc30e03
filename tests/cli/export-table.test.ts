import { tableFromIPC } from "@uwdata/flechette";
import { parquetReadObjects } from "hyparquet";
import { expect, it } from "vitest";
import { runCommand } from "../../src/cli/run-command.ts";
import { editedWell, openedSession } from "../support/edit-session.ts";
import { type SmallSurface, smallSurface } from "./small-surface.ts";

const tops = 'Piece,Mass (g),Thickness,Note\nA,"1,234",3/32 in,=cmd\nB,"1,300",7/64 in,\'plain\n';
const files = {
  "records/tops.csv": tops,
  "records/tops.about.json": '{"title":"Tops","read":{"decimal":","},"columns":{"Mass":{"uncertainty":"0.1 g"}}}',
  "two.csv": "a,b\n1,2\n\nc,d\n3,4\n",
  "shop.md": [
    "# Shop",
    "```records tops",
    "from records/tops.csv",
    "```",
    "```columns tops",
    "mass_left = mass - 1 g in g",
    "```",
    "```question heavier",
    "mass against wieght",
    "```",
    "",
  ].join("\n"),
};
const exported = async (args: readonly string[], surface: SmallSurface = smallSurface(files)) => {
  const { code, stdout, stderr } = await runCommand(["export", ...args, "--json"], surface);
  return { code, stderr, surface, value: stdout === "" ? null : (JSON.parse(stdout) as Record<string, unknown>) };
};

it("writes the raw cells of a file as CSV, guarded, with a description that says so", async () => {
  const { code, value, surface } = await exported(["records/tops.csv", "--as", "csv", "-o", "out/t.csv"]);
  expect([code, value]).toEqual([0, { files: ["out/t.csv", "out/t.about.json"] }]);
  expect(surface.written.get("out/t.csv")).toBe(
    'Piece,Mass (g),Thickness (in),Note\r\nA,"1,234",3/32 in,\'=cmd\r\nB,"1,300",7/64 in,\'plain\r\n',
  );
  expect(JSON.parse(surface.written.get("out/t.about.json") ?? "")).toEqual({
    version: 1,
    title: "Tops",
    columns: { Mass: { uncertainty: "0.1 g" } },
    read: { decimal: ",", encoding: "utf-8", delimiter: ",", guarded: true },
  });
});

it("is read again as it was", async () => {
  const { surface } = await exported(["records/tops.csv", "--as", "csv", "-o", "t.csv"]);
  const tables = async (file: string) =>
    (JSON.parse((await runCommand(["read", file, "--json"], surface)).stdout) as { tables: { rows: unknown }[] })
      .tables[0]?.rows;
  expect(await tables("t.csv")).toEqual(await tables("records/tops.csv"));
});

it("writes values where they are asked for, one unit a column", async () => {
  const { surface } = await exported(["records/tops.csv", "--as", "csv", "--values"]);
  // 3/32 in = 0.09375 in, 7/64 in = 0.109375 in; 1,234 is 1.234 by the description.
  expect(surface.written.get("tops.csv")).toBe(
    "piece,mass (g),mass_uncertainty (g),thickness (in),note\r\nA,1.234,0.1,0.09375,'=cmd\r\nB,1.3,0.1,0.109375,'plain\r\n",
  );
});

it("writes a notebook's table with its formulas, whatever else is wrong in the notebook", async () => {
  const { code, value, surface } = await exported(["shop.md#tops", "--as", "json"]);
  expect([code, value]).toEqual([0, { files: ["tops.json"] }]);
  const json = JSON.parse(surface.written.get("tops.json") ?? "") as { columns: unknown[]; records: unknown[] };
  expect(json.columns).toContainEqual({ name: "mass_left", kind: "quantity", unit: "g", formula: "mass - 1 g in g" });
  expect(json.records[0]).toMatchObject({ piece: "A", mass: 1.234, mass_left: expect.closeTo(0.234, 12) });
});

it("writes Arrow and Parquet as bytes", async () => {
  const surface = smallSurface(files);
  await exported(["records/tops.csv", "--as", "arrow"], surface);
  await exported(["records/tops.csv", "--as", "parquet"], surface);
  const arrow = tableFromIPC(surface.bytes.get("tops.arrow") ?? new Uint8Array());
  expect([...(arrow.getChild("mass") ?? [])]).toEqual([1.234, 1.3]);
  const parquet = surface.bytes.get("tops.parquet") ?? new Uint8Array();
  expect(await parquetReadObjects({ file: parquet.slice().buffer })).toMatchObject([{ piece: "A" }, { piece: "B" }]);
});

it("takes the table that is asked for", async () => {
  const { surface } = await exported(["two.csv", "--as", "csv", "--table", "2", "-o", "t.csv"]);
  expect(surface.written.get("t.csv")).toBe("c,d\r\n3,4\r\n");
});

it("writes over nothing unasked", async () => {
  const about = "records/tops.about.json";
  for (const [file, there] of [
    ["records/tops.csv", about],
    ["shop.md", "shop.md"],
  ] as const) {
    const { code, value, surface } = await exported(["two.csv", "--as", "csv", "-o", file]);
    expect(code).toBe(1);
    expect(value?.problems).toEqual([{ code: "file-exists", file: there, sentence: expect.stringContaining(there) }]);
    expect(surface.written.size).toBe(0);
  }
});

it("replaces an earlier export where it may, and nothing else", async () => {
  const surface = smallSurface({ ...files, "mine.json": "{}", "mine.parquet": "mine" });
  for (const as of ["csv", "json", "arrow", "parquet"]) {
    const args = ["two.csv", "--as", as, "-o", `out.${as}`];
    expect((await exported(args, surface)).code).toBe(0);
    expect((await exported(args, surface)).value?.problems).toEqual([expect.objectContaining({ code: "file-exists" })]);
    expect((await exported([...args, "--replace"], surface)).code).toBe(0);
  }
  const before = surface.written.size + surface.bytes.size;
  for (const [file, as] of [
    ["two.csv", "csv"],
    ["records/tops.csv", "csv"],
    ["shop.md", "json"],
    ["mine.json", "json"],
    ["mine.parquet", "parquet"],
  ] as const)
    expect((await exported(["records/tops.csv", "--as", as, "-o", file, "--replace"], surface)).code).toBe(1);
  expect(surface.written.size + surface.bytes.size).toBe(before);
});

it.each([
  [["none.csv", "--as", "csv"], "missing-file"],
  [["none.md#tops", "--as", "csv"], "missing-file"],
  [["shop.md#none", "--as", "csv"], "unknown-table"],
  [["records/tops.csv", "--as", "csv", "--table", "2"], "unknown-table"],
  [["records/tops.csv", "--as", "csv", "--sheet", "May"], "unknown-table"],
  [["empty.csv", "--as", "csv"], "empty-file"],
  [["odd.csv", "--as", "json"], "description-not-understood"],
  [["wrong.md#tops", "--as", "csv"], "unknown-column"],
])("refuses %j with %s", async (args, code) => {
  const wrong = files["shop.md"].replace("mass - 1 g", "mess - 1 g");
  const more = { "empty.csv": "", "odd.csv": "a,b\n1,2\n", "odd.about.json": "[", "wrong.md": wrong };
  const result = await exported(args, smallSurface({ ...files, ...more }));
  expect([result.code, result.value?.problems]).toEqual([
    1,
    [expect.objectContaining({ code, sentence: expect.stringMatching(/\S/) })],
  ]);
  expect(result.surface.written.size).toBe(0);
});

it.each([
  [["records/tops.csv"]],
  [["records/tops.csv", "--as", "xls"]],
  [["records/tops.csv", "--as", "csv", "--table", "0"]],
  [["--as", "csv"]],
])("does not understand %j", async (args) => expect((await exported(args)).code).toBe(2));

it("exports the records as their edits make them, and says which were set aside", async () => {
  const text = "a,b\nx,2\ny,3\n";
  const { log } = await editedWell(
    await openedSession(new TextEncoder().encode(text)),
    { what: "cell", table: 1, row: 1, col: 2, before: "2", after: "=2" },
    { what: "set-aside", table: 1, row: 2, reason: "split" },
  );
  const edited = { "t.csv": text, "t.csv.edits.jsonl": log };
  const { surface } = await exported(["t.csv", "--as", "csv", "-o", "u.csv"], smallSurface(edited));
  expect(surface.written.get("u.csv")).toBe("a,b,set aside\r\nx,'=2,\r\ny,3,split\r\n");
  const values = await exported(["t.csv", "--as", "json"], smallSurface(edited));
  expect(JSON.parse(values.surface.written.get("t.json") ?? "")).toMatchObject({
    records: [{ left_out: null }, { a: "y", b: "3", left_out: "split" }],
  });
  const torn = { ...edited, "t.csv.edits.jsonl": log.replace("=2", "=3") };
  const refused = await exported(["t.csv", "--as", "csv", "-o", "u.csv"], smallSurface(torn));
  expect([refused.code, refused.surface.written.size]).toEqual([1, 0]);
});

it("keeps the name of a sheet or notebook table within this folder", async () => {
  const notebook = "```records a\nfrom two.csv\n```\n";
  const { value } = await exported(["n.md#a", "--as", "json"], smallSurface({ ...files, "n.md": notebook }));
  expect(value).toEqual({ files: ["a.json"] });
});

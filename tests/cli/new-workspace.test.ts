import { expect, it } from "vitest";
import { runCommand } from "../../src/cli/run-command.ts";
import { descriptionFromJson, recordSchemas } from "../../src/core/records/index.ts";
import { smallSurface } from "./small-surface.ts";

async function made(folder = "shop") {
  const surface = smallSurface({});
  const { code, stdout, stderr } = await runCommand(["new", folder, "--json"], surface);
  return { surface, code, stderr, files: (JSON.parse(stdout) as { files: string[] }).files };
}
const json = async (args: readonly string[], surface: ReturnType<typeof smallSurface>) => {
  const { code, stdout } = await runCommand([...args, "--json"], surface);
  return { code, value: JSON.parse(stdout) as { readonly [key: string]: unknown } };
};

it("makes a notebook, and a table with its description for every schema", async () => {
  const { code, stderr, files, surface } = await made();
  expect([code, stderr]).toEqual([0, ""]);
  const tables = ["wood", "instruments", "tonal-notes", "rig-checks", "reference-values"];
  expect(files).toEqual([
    "shop/first-questions.md",
    ...tables.flatMap((name) => [`shop/records/${name}.csv`, `shop/records/${name}.about.json`]),
  ]);
  expect([...surface.written.keys()].sort()).toEqual([...files].sort());
});

it("has an example that is written right and cannot tell yet", async () => {
  const { surface } = await made();
  expect(await json(["check", "shop/first-questions.md"], surface)).toEqual({ code: 0, value: { problems: [] } });
  const { code, value } = await json(["report", "shop/first-questions.md"], surface);
  const entries = value.entries as { name: string; kind: string; finding?: { kind: string; code?: string } }[];
  const asked = entries.filter((entry) => ["question", "rule", "rig"].includes(entry.kind));
  expect(code).toBe(0);
  expect(asked.map(({ name, finding }) => [name, finding?.kind])).toEqual([
    ["stiffer-thinner", "refused"],
    ["density-of-woods", "refused"],
    ["stiffer-ends-thinner", "refused"],
    ["balance", "refused"],
  ]);
  expect(surface.written.get("shop/first-questions.md")).toContain("follow\nyour local codes and licensed practice");
});

it("has tables that are read by their descriptions without a warning of their cells", async () => {
  const { surface } = await made();
  for (const { id, fields } of recordSchemas()) {
    const { value } = await json(["read", `shop/records/${id}.csv`], surface);
    const [table] = value.tables as { columns: { name: string; unit: string | null }[] }[];
    expect(table?.columns.map(({ name, unit }) => [name, unit])).toEqual(fields.map(({ name, unit }) => [name, unit]));
    expect(value).toMatchObject({ warnings: [{ code: "no-rows" }], setAside: [] });
    const about = descriptionFromJson(surface.written.get(`shop/records/${id}.about.json`) ?? "");
    if (!about.ok) throw new Error(`${id} has a description that is refused`);
    for (const { name, meaning, kind, unit, usual, uncertainty } of fields)
      expect(about.value.columns?.[name]).toEqual({
        meaning,
        kind,
        ...(unit ? { unit } : {}),
        ...(usual ? { usual } : {}),
        ...(uncertainty === null ? {} : { uncertainty: { value: uncertainty, unit } }),
      });
  }
});

it("answers as soon as a table has records", async () => {
  const { surface } = await made();
  const path = "shop/records/wood.csv";
  const rows = Array.from({ length: 12 }, (_, at) => {
    const species = at % 2 ? "cedar" : "spruce";
    return `W-${at},${species},${species}-${at},550,200,${4 + (at % 5) / 10},${170 + at + (at % 2 ? 0 : 15)},7,,,,,,,`;
  });
  surface.written.set(path, `${surface.written.get(path)}${rows.join("\n")}\n`);
  const { value } = await json(["report", "shop/first-questions.md"], surface);
  const entries = value.entries as { name: string; finding?: { kind: string } }[];
  expect(entries.find((entry) => entry.name === "density-of-woods")?.finding?.kind).toBe("comparison");
});

it("leaves a folder alone that holds anything", async () => {
  const surface = smallSurface({ "shop/mine.txt": "mine" });
  const { code, value } = await json(["new", "shop"], surface);
  expect(code).toBe(1);
  expect(value.problems).toEqual([
    { code: "folder-taken", file: "shop", sentence: expect.stringContaining("nothing was put there") },
  ]);
  expect(surface.written.size).toBe(0);
});

it("says why the folder could not be made", async () => {
  const surface = { ...smallSurface({}), writeFolder: async () => ({ ok: false, reason: "EACCES" }) as const };
  const { code, value } = await json(["new", "shop"], surface);
  expect([code, value.problems]).toEqual([
    1,
    [{ code: "folder-not-made", file: "shop", sentence: expect.stringContaining("EACCES") }],
  ]);
});
it("needs one folder", async () => {
  for (const args of [["new"], ["new", "a", "b"]]) expect((await runCommand(args, smallSurface({}))).code).toBe(2);
});

// The schemas of record tables: valid, of one shape, and each unit and header read as the importer reads it.
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import instruments from "../../data-schema/instruments.schema.json?validator";
import referenceValues from "../../data-schema/reference-values.schema.json?validator";
import rigChecks from "../../data-schema/rig-checks.schema.json?validator";
import tonalNotes from "../../data-schema/tonal-notes.schema.json?validator";
import wood from "../../data-schema/wood.schema.json?validator";
import { readRecords, recordSchemas } from "../../src/core/records/index.ts";
import { unitFromText } from "../../src/core/units/index.ts";

const folder = new URL("../../data-schema/", import.meta.url);
// Compiled when the tests are built, which refuses what is no schema of 2020-12.
const validators = {
  instruments,
  "reference-values": referenceValues,
  "rig-checks": rigChecks,
  "tonal-notes": tonalNotes,
  wood,
};
const ids = Object.keys(validators) as (keyof typeof validators)[];
type Field = Readonly<Record<string, unknown>>;
type Written = {
  readonly $schema: string;
  readonly $id: string;
  readonly description: string;
  readonly items: { readonly required: readonly string[]; readonly properties: Readonly<Record<string, Field>> };
};
const written = new Map<string, Written>(
  ids.map((id) => [id, JSON.parse(readFileSync(new URL(`${id}.schema.json`, folder), "utf8")) as Written]),
);
const fields = [...written].flatMap(([id, { items }]) =>
  Object.entries(items.properties).map(([name, field]) => [`${id}/${name}`, field] as const),
);
const quantities = fields.filter(([, field]) => field["x-kind"] === "quantity");

it("has no schema without a name of its own", () => {
  const all = readdirSync(folder).filter((file) => file.endsWith(".schema.json"));
  const named = all.map((file) => (JSON.parse(readFileSync(new URL(file, folder), "utf8")) as { $id: string }).$id);
  expect(named).toEqual(all);
});

it.each(ids)("%s is a schema of 2020-12, and its examples fit it", (id) => {
  const schema = written.get(id);
  expect(schema?.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  const validate = validators[id];
  const record = Object.entries(schema?.items.properties ?? {}).map(([name, field]) => [
    name,
    (field.examples as readonly unknown[])[0],
  ]);
  expect(validate([Object.fromEntries(record)]), JSON.stringify(validate.errors)).toBe(true);
  expect(validate([{}])).toBe(false);
});

it.each(fields)("%s says header, meaning, kind and an example", (_, field) => {
  for (const key of ["title", "description", "x-kind"]) expect(field[key]).toMatch(/\S/);
  expect(field.examples).toHaveLength(1);
});

it.each(quantities)("%s has a unit that is known and a range with its source", (_, field) => {
  const range = field["x-typicalRange"] as { low: number; high: number; source: string };
  expect(unitFromText(String(field["x-unit"]))).not.toBeNull();
  expect(range.low).toBeLessThan(range.high);
  expect(range.source).toMatch(/\S/);
  const [example] = field.examples as readonly number[];
  expect(example).toBeGreaterThanOrEqual(range.low);
  expect(example).toBeLessThanOrEqual(range.high);
});

it.each(recordSchemas())("reads the headers of $id as the fields mean them", async ({ id, fields }) => {
  const examples = fields.map((field) => field.example.replace(/.*,.*/, (text) => `"${text}"`));
  const text = `${fields.map((field) => field.header).join(",")}\r\n${examples.join(",")}\r\n`;
  const { tables, warnings } = await readRecords(new TextEncoder().encode(text), `${id}.csv`);
  expect(warnings).toEqual([]);
  expect(tables[0]?.columns.map(({ name, unit, kind }) => ({ name, unit, kind }))).toEqual(
    fields.map(({ name, unit, kind }) => ({ name, unit, kind })),
  );
  const key = (name: string) => name.toLowerCase().replaceAll(" ", "_");
  expect(fields.map(({ name }) => key(name))).toEqual(fields.map((field) => field.id));
});

it("says the usual cautions where work can hurt or the law protects", () => {
  const wood = written.get("wood");
  expect(wood?.description).toContain("dust");
  for (const text of [wood?.description, wood?.items.properties.species?.description])
    expect(text).toContain("follow your local codes and licensed practice");
});

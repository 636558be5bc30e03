// Each form is read back by what others read it with: values, missing ones, units, formulas.
import { tableFromIPC } from "@uwdata/flechette";
import { fromArrow } from "arquero";
import { parquetMetadata, parquetRead } from "hyparquet";
import { expect, it } from "vitest";
import validate from "../../../../data-schema/exported-table.schema.json?validator";
import { columnsFromTable } from "../../../../src/core/columns/index.ts";
import {
  descriptionFromJson,
  type ExportedTable,
  exportFormats,
  readTable,
} from "../../../../src/core/records/index.ts";

const table: ExportedTable = {
  name: "tops",
  rowCount: 3,
  columns: [
    { name: "piece", kind: "label", holds: "texts", unit: null, values: ["T-1", "=T", null] },
    { name: "thickness", kind: "quantity", holds: "numbers", unit: "mm", values: [3.97, null, -0.1] },
    {
      name: "figure",
      kind: "quantity",
      holds: "numbers",
      unit: "m4/(kg.s)",
      values: [11.5, 12, null],
      formula: "a / b",
    },
    { name: "sold", kind: "yes-no", holds: "truths", unit: null, values: [true, null, false] },
    { name: "__proto__", kind: "words", holds: "texts", unit: null, values: ["ʻ½ é\r\n", "", "x"] },
  ],
};
const rows = Array.from({ length: 3 }, (_, row) =>
  Object.fromEntries(table.columns.map(({ name, values }) => [name, values[row]])),
);
const empty: ExportedTable = {
  name: "none",
  rowCount: 0,
  columns: table.columns.map((one) => ({ ...one, values: [] })),
};

async function made(id: string, from = table) {
  const format = exportFormats.find((each) => each.id === id);
  if (!format) throw new Error(`no ${id}`);
  const { content, description } = await format.exported(from);
  return { bytes: typeof content === "string" ? new TextEncoder().encode(content) : content, description };
}

it("writes JSON of its schema", async () => {
  const json = JSON.parse(new TextDecoder().decode((await made("json")).bytes)) as {
    records: unknown;
    columns: unknown;
  };
  expect(validate(json), JSON.stringify(validate.errors)).toBe(true);
  expect(json.records).toEqual(rows);
  expect(json.columns).toContainEqual({ name: "figure", kind: "quantity", unit: "m4/(kg.s)", formula: "a / b" });
  expect(JSON.parse(new TextDecoder().decode((await made("json", empty)).bytes))).toMatchObject({ records: [] });
  expect(validate({ ...json, records: [{ piece: [] }] })).toBe(false);
});

it("writes Arrow with units in the fields", async () => {
  const { bytes } = await made("arrow");
  const back = tableFromIPC(bytes);
  expect(
    back.schema.fields.map(({ name, metadata }) => [name, metadata?.get("unit"), metadata?.get("formula")]),
  ).toEqual(table.columns.map(({ name, unit, formula }) => [name, unit ?? undefined, formula]));
  for (const { name, values } of table.columns) expect([...(back.getChild(name) ?? [])]).toEqual(values);
  expect(fromArrow(bytes).array("thickness")).toEqual([3.97, null, -0.1]);
  expect(tableFromIPC((await made("arrow", empty)).bytes).numRows).toBe(0);
});

const parquetRows = (file: ArrayBuffer) =>
  new Promise((found, failed) => parquetRead({ file, onComplete: found }).catch(failed));

it("writes Parquet with units in its metadata", async () => {
  const file = (await made("parquet")).bytes.slice().buffer;
  expect(await parquetRows(file)).toEqual(rows.map((row) => Object.values(row)));
  const said = parquetMetadata(file).key_value_metadata?.find(({ key }) => key === "columns")?.value ?? "";
  expect(JSON.parse(said)).toMatchObject({
    thickness: { unit: "mm" },
    figure: { unit: "m4/(kg.s)", formula: "a / b" },
  });
  expect(await parquetRows((await made("parquet", empty)).bytes.slice().buffer)).toEqual([]);
});

it("writes CSV that a notebook reads as the same columns", async () => {
  const { bytes, description } = await made("csv");
  expect(new TextDecoder().decode(bytes).split("\r\n")[0]).toBe(
    "piece,thickness (mm),figure (m4/(kg.s)),sold,__proto__",
  );
  const about = descriptionFromJson(JSON.stringify(description));
  if (!about.ok) throw new Error("the description is refused");
  const [read] = readTable(bytes, "tops.csv", about.value.read).tables;
  if (!read) throw new Error("no table");
  const { columns } = columnsFromTable(read, "tops.csv", "tops", about.value);
  const [figure, thickness] = [columns.get("figure"), columns.get("thickness")];
  if (figure?.kind !== "quantity" || thickness?.kind !== "quantity") throw new Error("no quantities");
  expect([figure.unit, ...figure.values]).toEqual(["m4/(kg.s)", 11.5, 12, Number.NaN]);
  expect([thickness.unit, ...thickness.values].map((one) => (typeof one === "number" ? one * 1000 : one))).toEqual([
    "mm",
    expect.closeTo(3.97, 12),
    Number.NaN,
    expect.closeTo(-0.1, 12),
  ]);
  expect(columns.get("piece")).toMatchObject({ names: ["=T", "T-1"] });
  expect(columns.get("sold")).toMatchObject({ values: Int8Array.of(1, -1, 0) });
});

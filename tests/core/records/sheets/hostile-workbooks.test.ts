// Workbooks made to do harm, or broken: each is refused with its code, or read, and takes no memory for what is not there.
import { constants, crc32, deflateRawSync } from "node:zlib";
import { expect, it } from "vitest";
import { workbookGrids } from "../../../../src/core/records/sheets/workbook-grids.ts";
import { odsFile, odsRows, xlsxFile, xlsxRows, type ZipContent, zipFile } from "./workbook-file.ts";

const MEBI = 1 << 20;
const plain = xlsxFile({
  sheets: [
    {
      rows: xlsxRows([
        ["id", "mass"],
        ["B-1", 2],
      ]),
    },
  ],
});
const sheetOf = (markup: string) => xlsxFile({ sheets: [{ rows: markup }] });
const tableOf = (rows: string) => odsFile(`<table:table table:name="a">${rows}</table:table>`);

/** So many MiB of spaces, packed without ever being whole. */
function spaces(mebibytes: number): ZipContent {
  const [one, end] = [Buffer.alloc(MEBI, " "), Buffer.from("x")];
  const block = deflateRawSync(one, { level: 9, finishFlush: constants.Z_FULL_FLUSH });
  let checksum = 0;
  for (let left = mebibytes; left > 0; left--) checksum = crc32(one, checksum);
  const packed = Buffer.concat([...Array<Buffer>(mebibytes).fill(block), deflateRawSync(end)]);
  return { packed, checksum: crc32(end, checksum) };
}
const ods = [["mimetype", "application/vnd.oasis.opendocument.spreadsheet"]] as const;

it.each<[string, Uint8Array, string]>([
  ["a part that is too large when unpacked", zipFile([...ods, ["content.xml", spaces(193)]]), "part-too-large"],
  [
    "parts that are too large together",
    zipFile([...ods, ["styles.xml", spaces(191)], ["content.xml", spaces(191)]]),
    "workbook-too-large",
  ],
  ["too many parts", zipFile(Array.from({ length: 4097 }, (_, at) => [`${at}.xml`, ""] as const)), "too-many-parts"],
  ["half a file", plain.subarray(0, 900), "broken-workbook"],
  [
    "a part that says it is locked",
    zipFile([["mimetype", { packed: new Uint8Array(2), flags: 1 }]]),
    "locked-workbook",
  ],
  ["a zip file of something else", zipFile([["letter.txt", "dear"]]), "not-a-table"],
  ["a document type", sheetOf('<!DOCTYPE a [<!ENTITY b "c">]><row><c><v>1</v></c></row>'), "unsafe-workbook"],
  ["an entity of its own", sheetOf('<row><c t="str"><v>&b;</v></c></row>'), "broken-workbook"],
  ["an element that is never closed", sheetOf("<row>"), "broken-workbook"],
  ["elements without end", sheetOf("<row>".repeat(1000)), "broken-workbook"],
  ["elements within elements", sheetOf("<a>".repeat(101) + "</a>".repeat(101)), "broken-workbook"],
  ["a place outside every sheet", sheetOf('<row r="1048577"><c r="A1048577"><v>1</v></c></row>'), "broken-workbook"],
  ["a column outside every sheet", sheetOf('<row><c r="XFE1"><v>1</v></c></row>'), "broken-workbook"],
  [
    "a cell repeated over the whole sheet",
    tableOf(
      '<table:table-row table:number-rows-repeated="1048576"><table:table-cell office:value-type="string" table:number-columns-repeated="16384"><text:p>x</text:p></table:table-cell></table:table-row>',
    ),
    "workbook-too-full",
  ],
  [
    "more dates than can be read one by one",
    tableOf(
      '<table:table-row table:number-rows-repeated="500001"><table:table-cell office:value-type="date" office:date-value="2024-05-03"/></table:table-row>',
    ),
    "workbook-too-full",
  ],
  [
    "a count that is none",
    tableOf(
      '<table:table-row table:number-rows-repeated="-1"><table:table-cell office:value-type="float" office:value="1"/></table:table-row>',
    ),
    "broken-workbook",
  ],
])("refuses %s", async (_, bytes, code) => {
  expect(await workbookGrids(bytes)).toBe(code);
});

it("refuses a part whose checksum is wrong", async () => {
  const at = Buffer.from(plain).indexOf("B-1");
  expect(await workbookGrids(plain.with(at, 65))).toBe("broken-workbook");
});

it("refuses a sheet that lies outside the workbook", async () => {
  const links =
    '<Relationships><Relationship Id="rId1" Type="a/worksheet" TargetMode="External" Target="http://127.0.0.1:9/"/></Relationships>';
  const book = '<workbook><sheets><sheet name="a" sheetId="1" r:id="rId1"/></sheets></workbook>';
  expect(
    await workbookGrids(
      zipFile([
        ["xl/workbook.xml", book],
        ["xl/_rels/workbook.xml.rels", links],
      ]),
    ),
  ).toBe("unsafe-workbook");
});

it("refuses an ODS workbook that is locked", async () => {
  const manifest = "<manifest><file-entry><encryption-data/></file-entry></manifest>";
  const parts = [
    ["mimetype", "application/vnd.oasis.opendocument.spreadsheet"],
    ["content.xml", "\u0001"],
    ["META-INF/manifest.xml", manifest],
  ] as const;
  expect(await workbookGrids(zipFile(parts))).toBe("locked-workbook");
});

it.each<[string, Uint8Array, number]>([
  [
    "the last cell there can be",
    sheetOf('<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>2</v></c></row>'),
    2,
  ],
  [
    "a million repeated empty cells",
    tableOf(
      `${odsRows([["id"]])}<table:table-row table:number-rows-repeated="1048575"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>`,
    ),
    1,
  ],
  ["five million empty rows", sheetOf("<row></row>".repeat(500_000)), 0],
])("reads %s", async (_, bytes, cells) => {
  const grids = await workbookGrids(bytes);
  expect(typeof grids === "string" ? grids : grids[0]?.raws.length).toBe(cells);
});

it("takes no attribute from the text of another", async () => {
  const rows = `<row spans="a hidden='1'"><c r='B1' note=" r='A1' t='e'"><v>7</v></c></row>`;
  const grids = await workbookGrids(sheetOf(rows));
  const [grid] = typeof grids === "string" ? [] : grids;
  expect([grid?.columns, grid?.stored, grid?.hiddenRows.size]).toEqual([
    [1],
    [{ as: "number", value: 7, unit: null }],
    0,
  ]);
});

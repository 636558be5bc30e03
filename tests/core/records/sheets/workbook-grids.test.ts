// What lies in a workbook, before anything is read from it. Expected values: IMPORT rules 4, ECMA-376, OpenDocument 1.3.
import { expect, it } from "vitest";
import { workbookGrids } from "../../../../src/core/records/sheets/workbook-grids.ts";
import { odsFile, odsRows, xlsxFile, xlsxRows, zipFile } from "./workbook-file.ts";

async function gridsOf(bytes: Uint8Array) {
  const grids = await workbookGrids(bytes);
  if (typeof grids === "string") throw new Error(grids);
  return grids;
}
/** Cells of the first sheet as "row,column raw" and what is kept of them. */
async function cellsOf(bytes: Uint8Array): Promise<[string, unknown][]> {
  const [grid] = await gridsOf(bytes);
  if (!grid) return [];
  return grid.raws.map((raw, at) => [`${grid.rows[at]},${grid.columns[at]} ${raw}`, grid.stored[at]]);
}
const number = (value: number, unit: string | null = null) => ({ as: "number", value, unit });
const xlsxCell = async (cell: string, more: Partial<Parameters<typeof xlsxFile>[0]> = {}) =>
  (await cellsOf(xlsxFile({ sheets: [{ rows: xlsxRows([[{ cell }]]) }], ...more })))[0];

it.each([
  ['t="s"><v>1</v>', "0,0 rich text", { as: "text" }],
  ['t="s"><v>9</v>', "0,0 9", { as: "error" }],
  ['t="str"><f>A2</f><v>2.31</v>', "0,0 2.31", { as: "text" }],
  ['t="inlineStr"><is><r><t>two </t></r><r><t xml:space="preserve">runs</t></r></is>', "0,0 two runs", { as: "text" }],
  ["><v>0.1234567890123456789</v>", "0,0 0.12345678901234568", number(0.12345678901234568)],
  ["><v>4.5123E4</v>", "0,0 45123", number(45123)],
  ['t="b"><v>1</v>', "0,0 TRUE", { as: "boolean" }],
  ['t="b"><f>A2&gt;1</f><v>0</v>', "0,0 FALSE", { as: "boolean" }],
  ['t="e"><f>1/0</f><v>#DIV/0!</v>', "0,0 #DIV/0!", { as: "error" }],
  ["><f>A2+1</f><v>3</v>", "0,0 3", number(3)],
  ["><f>A2+1</f>", "0,0 ", { as: "lost-formula" }],
  ["><f>A2+1</f><v></v>", "0,0 ", { as: "lost-formula" }],
  ['t="d"><v>2024-05-03T14:30:00</v>', "0,0 2024-05-03T14:30:00", { as: "date", value: "2024-05-03T14:30" }],
  ['t="inlineStr"><is><t>a_x000D_b &amp; &#65;</t></is>', "0,0 a\rb & A", { as: "text" }],
])("takes a cell of XLSX as it is stored: %s", async (cell, raw, stored) => {
  const strings = ["<t>plain</t>", "<r><t>rich</t></r><r><t> text</t></r><rPh><t>spoken</t></rPh>"];
  expect(await xlsxCell(cell, { strings })).toEqual([raw, stored]);
});

it("takes a shared string without characters for nothing", async () => {
  expect(await xlsxCell('t="s"><v>0</v>', { strings: ["<t/>"] })).toBeUndefined();
});

it("takes an empty text as a formula's result for nothing", async () => {
  expect(await xlsxCell('t="str"><f>""</f><v></v>')).toBeUndefined();
});

it.each([
  ["0.00%", 0.07, number(7, "%")],
  ['0.00 "mm"', 2.31, number(2.31, "mm")],
  ["0.00\\ \\m\\m", 2.31, number(2.31, "mm")],
  ['General" kg"', 3, number(3, "kg")],
  ['#,##0.0\\ "g";[Red]\\-#,##0.0\\ "g"', 2, number(2, "g")],
  ['0 "g";0 "kg"', 2, number(2)],
  ['0.0,"kg"', 1234, number(1234)],
  ['0.00 "mm"_-', 2, number(2, "mm")],
  ['"T "0', 5, number(5)],
  ['0 "pcs"', 5, number(5, "pcs")],
  ['_-* #,##0.00\\ "€"_-', 5, number(5)],
  ["# ?/??", 0.09375, number(0.09375)],
  ["0.0 [$mm]", 2, number(2, "mm")],
  ["0.0 [$kg-407]", 2, number(2, "kg")],
  ["0.0\\ [$CHF-807]", 2, number(2)],
  ["0.0 mm", 2, number(2, "mm")],
  ["0.0 °C", 21, number(21, "Cel")],
  ['[>=1000]0.0\\ "g";[Red]0.00\\ "g";@', 2, number(2, "g")],
  ["dd/mm/yyyy", 45415, { as: "date", value: "2024-05-03" }],
  ["d\\-mmm", 45359, { as: "date", value: "2024-03-08" }],
  ["[$-407]mmmm\\ yyyy;@", 45415, { as: "date", value: "2024-05-03" }],
  ["yyyy-mm-dd hh:mm", 45415.604166666664, { as: "date", value: "2024-05-03T14:30" }],
  ["yyyy-mm-dd hh:mm", 45415.604166, { as: "date", value: "2024-05-03T14:30" }],
  ["yyyy-mm-dd hh:mm:ss", 45415.60417824074, { as: "date", value: "2024-05-03T14:30:01" }],
  ["h:mm AM/PM", 0.5, number(0.5)],
  ["[h]:mm", 1.5, number(1.5)],
  ["mm:ss.0", 0.5, number(0.5)],
  ["0.00E+00", 0.5, number(0.5)],
  ["dd/mm/yyyy", 60, number(60)],
  ["dd/mm/yyyy", 59, { as: "date", value: "1900-02-28" }],
  ["dd/mm/yyyy", 1, { as: "date", value: "1900-01-01" }],
  ["dd/mm/yyyy", -1, number(-1)],
])("sees in the format %s what a number is", async (format, value, stored) => {
  expect((await xlsxCell(`s="1"><v>${value}</v>`, { formats: [format] }))?.[1]).toEqual(stored);
});

it("counts days from 1904 where the workbook says so", async () => {
  const properties = '<workbookPr date1904="1"/>';
  const found = await xlsxCell('s="1"><v>43953</v>', { formats: ["yyyy-mm-dd"], properties });
  expect(found?.[1]).toEqual({ as: "date", value: "2024-05-03" });
});

it("finds hidden sheets, rows and columns, merged cells and cells without a place", async () => {
  const rows = '<row r="3"><c r="B3"><v>1</v></c><c><v>2</v></c></row><row hidden="1"><c><v>3</v></c></row>';
  const before = '<cols><col min="2" max="3" hidden="1"/></cols>';
  const after = '<mergeCells><mergeCell ref="B4:B3"/></mergeCells>';
  const sheets = [
    { rows, before, after },
    { name: "a", state: "hidden", rows },
    { name: "b", state: "veryHidden", rows },
  ];
  const [first, ...others] = await gridsOf(xlsxFile({ sheets }));
  expect([first?.rows, first?.columns]).toEqual([
    [2, 2, 3],
    [1, 2, 0],
  ]);
  expect([first?.hiddenRows, first?.hiddenColumns]).toEqual([new Set([3]), new Set([1, 2])]);
  expect(first?.merges).toEqual([{ top: 2, left: 1, bottom: 3, right: 1 }]);
  expect(others.map(({ name, hidden, raws }) => ({ name, hidden, raws }))).toEqual([
    { name: "a", hidden: true, raws: [] },
    { name: "b", hidden: true, raws: [] },
  ]);
});

it("finds a sheet above the workbook's folder, and has none for a sheet that is a picture", async () => {
  const book = '<workbook><sheets><sheet name="c" r:id="rId1"/><sheet name="a" r:id="rId2"/></sheets></workbook>';
  const links =
    '<R><Relationship Id="rId1" Type="x/chartsheet" Target="c.xml"/><Relationship Id="rId2" Type="x/worksheet" Target="./../a.xml"/></R>';
  const sheet = "<worksheet><sheetData><row><c><v>7</v></c></row></sheetData></worksheet>";
  const parts = [
    ["xl/workbook.xml", book],
    ["xl/_rels/workbook.xml.rels", links],
    ["a.xml", sheet],
    ["xl/c.xml", "<chartsheet/>"],
  ] as const;
  expect((await gridsOf(zipFile(parts))).map(({ name, raws }) => [name, raws])).toEqual([["a", ["7"]]]);
});

it("sorts cells that stand in another order, and keeps the later of two", async () => {
  const rows =
    '<row r="2"><c r="B2"><v>1</v></c><c r="A2"><v>2</v></c><c r="B2"><v>3</v></c></row><row r="1"><c r="A1"><v>4</v></c></row>';
  expect((await cellsOf(xlsxFile({ sheets: [{ rows }] }))).map(([cell]) => cell)).toEqual(["0,0 4", "1,0 2", "1,1 3"]);
});

const odsCellOf = async (cell: string, column = "", row = "", automatic = "", named = "") =>
  (
    await cellsOf(
      odsFile(
        `<table:table table:name="a">${column}<table:table-row${row}>${cell}</table:table-row></table:table>`,
        automatic,
        named,
      ),
    )
  )[0];

it.each([
  [
    'office:value-type="string"><text:p>a<text:s text:c="2"/>b<text:span>c</text:span></text:p><text:p>d</text:p>',
    "0,0 a  bc\nd",
    { as: "text" },
  ],
  [
    'office:value-type="string"><office:annotation><text:p>remark</text:p></office:annotation><text:p>own</text:p>',
    "0,0 own",
    { as: "text" },
  ],
  ['office:value-type="float" office:value="2.310"><text:p>2,3</text:p>', "0,0 2.31", number(2.31)],
  ['office:value-type="percentage" office:value="0.07"><text:p>7 %</text:p>', "0,0 0.07", number(7, "%")],
  [
    'office:value-type="date" office:date-value="2024-05-03"><text:p>3.5.</text:p>',
    "0,0 2024-05-03",
    { as: "date", value: "2024-05-03" },
  ],
  [
    'office:value-type="date" office:date-value="2024-12-31T23:59:59.9999"><text:p>x</text:p>',
    "0,0 2024-12-31T23:59:59.9999",
    { as: "date", value: "2025-01-01T00:00" },
  ],
  ['office:value-type="boolean" office:boolean-value="true"><text:p>WAHR</text:p>', "0,0 TRUE", { as: "boolean" }],
  [
    'table:formula="of:=1/0" office:value-type="string" office:string-value="" calcext:value-type="error"><text:p>#DIV/0!</text:p>',
    "0,0 #DIV/0!",
    { as: "error" },
  ],
  ['table:formula="of:=[.B1]+1" office:value-type="float" office:value="3"><text:p>3</text:p>', "0,0 3", number(3)],
  ['table:formula="of:=[.B1]+1">', "0,0 ", { as: "lost-formula" }],
  [
    'table:formula="of:=1/0" office:value-type="string" office:string-value=""><text:p>#DIV/0!</text:p>',
    "0,0 #DIV/0!",
    { as: "error" },
  ],
  [
    'table:formula="of:=1/0" office:value-type="float" office:value="0"><text:p>#DIV/0!</text:p>',
    "0,0 #DIV/0!",
    { as: "error" },
  ],
])("takes a cell of ODS as it is stored: %s", async (cell, raw, stored) => {
  expect(await odsCellOf(`<table:table-cell ${cell}</table:table-cell>`)).toEqual([raw, stored]);
});

const data =
  '<number:number-style style:name="N1"><number:number number:decimal-places="2"/><number:text> mm</number:text></number:number-style>';
const style = '<style:style style:name="ce1" style:family="table-cell" style:data-style-name="N1"/>';
const plainCell = (own = "") => `<table:table-cell${own} office:value-type="float" office:value="2.31"/>`;
it.each([
  ["the cell", "", "", ' table:style-name="ce1"'],
  ["the row", "", ' table:default-cell-style-name="ce1"', ""],
  ["the column", '<table:table-column table:default-cell-style-name="ce1"/>', "", ""],
])("finds the unit in a number style of %s", async (_, column, row, own) => {
  expect(await odsCellOf(plainCell(own), column, row, data + style)).toEqual(["0,0 2.31", number(2.31, "mm")]);
});

it.each([
  ["shows thousands", data.replace("<number:number ", '<number:number number:display-factor="1000" ')],
  [
    "writes another unit for some numbers",
    `${data.replace("</number:number-style>", '<style:map style:condition="value()&gt;=1" style:apply-style-name="N2"/></number:number-style>')}<number:number-style style:name="N2"><number:number/><number:text> cm</number:text></number:number-style>`,
  ],
])("takes no unit from a number style that %s", async (_, styles) => {
  expect(await odsCellOf(plainCell(' table:style-name="ce1"'), "", "", styles + style)).toEqual([
    "0,0 2.31",
    number(2.31),
  ]);
});

it("finds the unit in a style that another style is made from", async () => {
  const own = '<style:style style:name="ce2" style:family="table-cell" style:parent-style-name="ce1"/>';
  expect(await odsCellOf(plainCell(' table:style-name="ce2"'), "", "", own, data + style)).toEqual([
    "0,0 2.31",
    number(2.31, "mm"),
  ]);
});

it("counts repeated rows and cells as often as they say, and empty ones at the end as nothing", async () => {
  const rows = `<table:table-header-rows>${odsRows([["id", "mass"]])}</table:table-header-rows>
    <table:table-row table:number-rows-repeated="2"><table:table-cell office:value-type="float" office:value="7" table:number-columns-repeated="2"/></table:table-row>
    <table:table-row table:number-rows-repeated="3"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>
    <table:table-row-group table:display="false">${odsRows([["B-1", 2]])}</table:table-row-group>
    <table:table-row table:visibility="filter">${odsRows([["B-2"]]).slice(17)}
    <table:table-row table:number-rows-repeated="1048560"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>`;
  const columns =
    '<table:table-column/><table:table-column table:visibility="collapse" table:number-columns-repeated="16383"/>';
  const [grid] = await gridsOf(odsFile(`<table:table table:name="a">${columns}${rows}</table:table>`));
  expect(grid?.raws.map((raw, at) => `${grid.rows[at]},${grid.columns[at]} ${raw}`)).toEqual([
    "0,0 id",
    "0,1 mass",
    "1,0 7",
    "1,1 7",
    "2,0 7",
    "2,1 7",
    "6,0 B-1",
    "6,1 2",
    "7,0 B-2",
  ]);
  expect(grid?.hiddenRows).toEqual(new Set([6, 7]));
  expect([grid?.hiddenColumns.has(0), grid?.hiddenColumns.has(1)]).toEqual([false, true]);
});

it("does not look into a sheet of ODS that is not shown", async () => {
  const hidden =
    '<style:style style:name="ta2" style:family="table"><style:table-properties table:display="false"/></style:style>';
  const [grid] = await gridsOf(
    odsFile(`<table:table table:name="lists" table:style-name="ta2">${odsRows([["a"]])}</table:table>`, hidden),
  );
  expect([grid?.name, grid?.hidden, grid?.raws]).toEqual(["lists", true, []]);
});

// Every rule about sheets, on the smallest workbook that shows it. Expected readings are stated from the rules, by hand.
import { expect, it } from "vitest";
import { readRecords } from "../../../../src/core/records/index.ts";
import { rowsOf } from "../../../support/rows-of.ts";
import { odsFile, odsRows, type XlsxBook, xlsxFile, xlsxRows } from "./workbook-file.ts";

type Row = Parameters<typeof xlsxRows>[0][number];
const book = (rows: readonly Row[], more: Partial<XlsxBook> & { before?: string; after?: string } = {}) =>
  xlsxFile({
    sheets: [{ name: "S", rows: xlsxRows(rows), before: more.before ?? "", after: more.after ?? "" }],
    ...more,
  });
const read = (bytes: Uint8Array) => readRecords(bytes, "x.xlsx");
const merges = (...references: string[]) => ({
  after: `<mergeCells>${references.map((one) => `<mergeCell ref="${one}"/>`).join("")}</mergeCells>`,
});
/** Value, unit and code of the cells of a column of the first table. */
async function columnOf(bytes: Uint8Array, place: number) {
  const { tables } = await read(bytes);
  return tables.slice(0, 1).flatMap((table) =>
    rowsOf(table).map((row) => {
      const { raw, kind, value, unit, code } = row[place] ?? {};
      return [raw, kind, value, unit, ...(code === undefined ? [] : [code])];
    }),
  );
}
const shapes = async (bytes: Uint8Array) =>
  (await read(bytes)).tables.map(({ name, columns, rowCount }) => [
    name,
    columns.map((column) => [column.name, column.unit, column.kind].filter((one) => one !== null).join(" ")),
    rowCount,
  ]);

it("reads a sheet from its first used cell and counts records as the sheet counts rows", async () => {
  const rows = [
    [null, null],
    [null, "Boards"],
    [null, "board", "mass (g)"],
    [null, "B-1", 201.5],
    [null, "Total", 201.5],
  ];
  const { tables, setAside, warnings } = await read(book(rows));
  expect(tables.map(({ name, sheet, rowCount }) => [name, sheet, rowCount])).toEqual([["S", "S", 1]]);
  expect([...(tables[0]?.records ?? [])]).toEqual([4]);
  expect(setAside).toEqual([
    { sheet: "S", record: 2, code: "preamble" },
    { sheet: "S", record: 5, code: "total-row" },
  ]);
  expect(warnings).toEqual([]);
});

it("takes empty sheets for nothing, and says it of a workbook that has only those", async () => {
  const sheets = [
    { name: "a", rows: "" },
    {
      name: "b",
      rows: xlsxRows([
        ["id", "g"],
        ["B-1", 2],
      ]),
    },
  ];
  expect(await shapes(xlsxFile({ sheets }))).toEqual([["b", ["id text", "g quantity"], 1]]);
  expect(await read(book([]))).toMatchObject({ tables: [], setAside: [], warnings: [{ code: "empty-file" }] });
});

it("parts tables side by side at a wholly empty column, the left one first", async () => {
  const rows = [
    ["board", "mass (g)", null, "bridge", "height (mm)"],
    ["B-1", 201.5, null, "BR-1", 9.5],
    ["B-2", 198.5, null, "BR-2", 10],
    ["Total", 400, null, "BR-3", 9],
    [],
    ["top", "width (mm)"],
    ["T-1", 190],
  ];
  expect(await shapes(book(rows))).toEqual([
    ["S", ["board text", "mass g quantity"], 2],
    ["S 2", ["top text", "width mm quantity"], 1],
    ["S 3", ["bridge text", "height mm quantity"], 3],
  ]);
  expect((await read(book(rows))).setAside).toEqual([{ sheet: "S", record: 4, code: "total-row" }]);
});

it("parts tables beneath a title that is merged across both", async () => {
  const rows = [["Winter"], ["board", "mass (g)", null, "bridge", "height (mm)"], ["B-1", 2, null, "BR-1", 9]];
  expect((await shapes(book(rows, merges("A1:E1")))).map(([name]) => name)).toEqual(["S", "S 2"]);
});

it("reads the header of each table side by side by its own merged cells", async () => {
  const rows = [
    ["thickness (mm)", null, "mass (g)", null, "Bridges"],
    ["bass", "treble", null, null, "bridge", "height (mm)", "width (mm)", "mass (g)"],
    [2.31, 2.2, 201, null, "BR-1", 9.5, 28, 21],
    [2.4, 2.3, 198, null, "BR-2", 10, 29, 22],
  ];
  expect(await shapes(book(rows, merges("A1:B1")))).toEqual([
    ["S", ["thickness / bass mm quantity", "thickness / treble mm quantity", "mass g quantity"], 2],
    ["S 2", ["bridge text", "height mm quantity", "width mm quantity", "mass g quantity"], 2],
  ]);
});

it("numbers the tables of all sheets in the warnings", async () => {
  const one = {
    rows: xlsxRows([
      ["id", "mass (g)"],
      ["B-1", "2.5"],
    ]),
  };
  expect((await read(xlsxFile({ sheets: [one, one] }))).warnings).toEqual([
    { row: 1, col: 2, code: "number-as-text" },
    { table: 2, row: 1, col: 2, code: "number-as-text" },
  ]);
});

it("says which rows and columns are hidden, by the table's own count", async () => {
  const rows = `${xlsxRows([
    ["id", "mass (g)", "cost"],
    ["B-1", 2, 3],
  ])}<row r="3" hidden="1"><c r="A3" t="str"><v>B-2</v></c><c r="C3"><v>4</v></c></row>`;
  const before = '<cols><col min="3" max="9" hidden="1"/></cols>';
  expect((await read(xlsxFile({ sheets: [{ rows, before }] }))).warnings).toEqual([
    { col: 3, code: "hidden-column" },
    { row: 2, code: "hidden-row" },
  ]);
});

it("lets a value merged down hold for every row, with its unit, and counts no repetition by what is covered", async () => {
  const rows = [
    ["species", "width", "length (mm)"],
    ["spruce", "2 mm", 5],
    [null, null, 6],
    ["cedar", null, 7],
    [null, "3 mm", 6],
  ];
  const bytes = book(rows, merges("A2:A3", "A4:A5", "B2:B3"));
  expect(await columnOf(bytes, 0)).toEqual([
    ["spruce", "text", "spruce", null],
    ["", "text", "spruce", null, "merged-cell"],
    ["cedar", "text", "cedar", null],
    ["", "text", "cedar", null, "merged-cell"],
  ]);
  expect((await columnOf(bytes, 1)).slice(0, 3)).toEqual([
    ["2 mm", "quantity", 2, "mm"],
    ["", "quantity", 2, "mm", "merged-cell"],
    ["", "blank", null, null],
  ]);
});

it("sees two rows as different whose covered cells have different values, and as equal with equal ones", async () => {
  const rows = [
    ["species", "length (mm)"],
    ["spruce", 5],
    [null, 6],
    ["cedar", 7],
    [null, 6],
  ];
  const codes = async (...all: string[]) => (await read(book(rows, merges(...all)))).warnings.map(({ code }) => code);
  expect(await codes("A2:A3", "A4:A5")).toEqual(["merged-cell", "merged-cell"]);
  expect(await codes()).toEqual(["duplicate-row"]);
});

it("keeps the graver code beneath a merged cell", async () => {
  const rows = [
    ["piece", "width (mm)"],
    ["a", "<0.1"],
    ["b", null],
    ["c", "2O"],
    ["d", null],
    ["e", 3],
    ["f", 4],
  ];
  expect(await columnOf(book(rows, merges("B2:B3", "B4:B5")), 1)).toEqual([
    ["<0.1", "quantity", 0.1, "mm", "below-limit"],
    ["", "quantity", 0.1, "mm", "below-limit"],
    ["2O", "unreadable", null, null, "letter-in-number"],
    ["", "unreadable", null, null, "letter-in-number"],
    ["3", "quantity", 3, "mm"],
    ["4", "quantity", 4, "mm"],
  ]);
});

it("keeps a text that lies beneath a merged cell", async () => {
  const rows = [
    ["id", "species"],
    ["a", "spruce"],
    ["b", "cedar"],
  ];
  expect((await columnOf(book(rows, merges("B2:B3")), 1))[1]).toEqual(["cedar", "text", "cedar", null]);
});

it.each<[string, Row[], string[], string[]]>([
  [
    "names merged across over names",
    [
      ["board", "thickness (mm)", null, "mass (g)"],
      [null, "bass", "treble", null],
    ],
    ["B1:C1"],
    ["board text", "thickness / bass mm quantity", "thickness / treble mm quantity", "mass g quantity"],
  ],
  [
    "an upper row with one name",
    [
      [null, "thickness", null, null],
      ["board", "bass (mm)", "treble (mm)", "mass (g)"],
    ],
    ["B1:C1"],
    ["board text", "thickness / bass mm quantity", "thickness / treble mm quantity", "mass g quantity"],
  ],
  [
    "names merged down beside it",
    [
      ["board", "thickness [in]", null, "mass (g)"],
      [null, "bass", "treble", null],
    ],
    ["A1:A2", "B1:C1", "D1:D2"],
    ["board text", "thickness / bass [in_i] quantity", "thickness / treble [in_i] quantity", "mass g quantity"],
  ],
  [
    "a title above it",
    [
      ["Boards of the winter", null, null, null],
      ["board", "thickness", null, "mass (g)"],
      [null, "bass (mm)", "treble (mm)", null],
    ],
    ["A1:D1", "B2:C2"],
    ["board text", "thickness / bass mm quantity", "thickness / treble mm quantity", "mass g quantity"],
  ],
  [
    "units beneath it",
    [
      ["board", "thickness", null, "mass"],
      [null, "bass", "treble", null],
      [null, "mm", "mm", "g"],
    ],
    ["B1:C1"],
    ["board text", "thickness / bass mm quantity", "thickness / treble mm quantity", "mass g quantity"],
  ],
])("joins a header of two rows: %s", async (_, header, merged, columns) => {
  const bytes = book([...header, ["B-1", 2.31, 2.2, 201], ["B-2", 2.4, 2.3, 198]], merges(...merged));
  expect(await shapes(bytes)).toEqual([["S", columns, 2]]);
  const aside = (await read(bytes)).setAside.map(({ code }) => code);
  expect(aside).toEqual(merged.includes("A1:D1") ? ["preamble"] : header.length > 2 ? ["units-row"] : []);
});

it.each([2, 3])(
  "sets the title of a later table with a header of two rows aside, beneath %i columns",
  async (count) => {
    const rows = [
      ["top", "mass (g)", "wood"].slice(0, count),
      ["T-1", 150, "spruce"].slice(0, count),
      [],
      ["Necks"],
      ["neck", "depth (mm)", null],
      [null, "first", "ninth"],
      ["N-1", 21, 23],
    ];
    const { tables, setAside } = await read(book(rows, merges("B5:C5")));
    expect(tables.map(({ columns, rowCount }) => [columns.length, rowCount])).toEqual([
      [count, 1],
      [3, 1],
    ]);
    expect(setAside).toEqual([{ sheet: "S", record: 4, code: "preamble" }]);
  },
);

it("does not part a table at a column that a header merged across covers", async () => {
  const rows = [
    ["board", "remarks", null, "mass (g)"],
    ["B-1", "dry", null, 201],
    ["B-2", "bright", null, 198],
  ];
  expect(await shapes(book(rows, merges("B1:C1")))).toEqual([
    ["S", ["board text", "remarks text", "mass g quantity"], 2],
  ]);
});

it("takes units beneath merged names for units, and words in the rows for no header", async () => {
  const units = [
    ["board", "thickness", null, "mass"],
    [null, "mm", "mm", "g"],
    ["B-1", 2, 3, 4],
  ];
  expect(await shapes(book(units, merges("B1:C1")))).toEqual([
    ["S", ["board text", "thickness mm quantity", "column 3 mm quantity", "mass g quantity"], 1],
  ]);
  const words = [
    ["board", "top", "back", "sides"],
    ["B-1", "spruce", null, "maple"],
    ["B-2", "cedar", "maple", "ebony"],
  ];
  expect(await shapes(book(words, merges("B2:C2")))).toMatchObject([["S", { length: 4 }, 2]]);
});

it("sets a title merged across aside", async () => {
  const rows = [["Boards"], ["board", "mass (g)"], ["B-1", 201]];
  expect((await read(book(rows, merges("A1:B1")))).setAside).toEqual([{ sheet: "S", record: 1, code: "preamble" }]);
});

const formats = ["0.0%", '0.00 "mm"', '0.0 "cm"', "dd/mm/yyyy", "yyyy-mm-dd hh:mm", '0 "pcs"', '0.0 "Hz"'];
const styled = (style: number, value: number) => ({ cell: `s="${style}"><v>${value}</v>` });

it.each<[string, (string | { cell: string })[], unknown[]]>([
  [
    "hundredths",
    [styled(1, 0.08), styled(1, 0.075)],
    [
      ["0.08", "quantity", 8, "%"],
      ["0.075", "quantity", 7.5, "%"],
    ],
  ],
  [
    "a unit in the format",
    [styled(2, 2.31), styled(2, 1234.5)],
    [
      ["2.31", "quantity", 2.31, "mm"],
      ["1234.5", "quantity", 1234.5, "mm"],
    ],
  ],
  [
    "two units in formats",
    [styled(2, 2.31), styled(3, 2.5)],
    [
      ["2.31", "quantity", 2.31, "mm"],
      ["2.5", "quantity", 2.5, "cm"],
    ],
  ],
  [
    "a unit in one format only",
    [styled(2, 2.31), { cell: "><v>2.5</v>" }],
    [
      ["2.31", "quantity", 2.31, "mm"],
      ["2.5", "quantity", 2.5, null, "unit-missing"],
    ],
  ],
  [
    "a unit that nobody knows",
    [styled(6, 3), { cell: "><v>2.5</v>" }, { cell: "><v>2.5</v>" }],
    [
      ["3", "unreadable", null, null, "unknown-unit"],
      ["2.5", "quantity", 2.5, null],
      ["2.5", "quantity", 2.5, null],
    ],
  ],
  [
    "three decimals, which ask nothing",
    [{ cell: "><v>1.234</v>" }, { cell: "><v>2.31</v>" }],
    [
      ["1.234", "quantity", 1.234, null],
      ["2.31", "quantity", 2.31, null],
    ],
  ],
  [
    "three decimals beside texts with a comma",
    [{ cell: "><v>1.234</v>" }, "2,31"],
    [
      ["1.234", "quantity", 1.234, null],
      ["2,31", "quantity", 2.31, null, "number-as-text"],
    ],
  ],
  [
    "a very small number",
    [{ cell: "><v>1.5E-10</v>" }, { cell: "><v>-2.5e21</v>" }],
    [
      ["1.5e-10", "quantity", 1.5e-10, null],
      ["-2.5e+21", "quantity", -2.5e21, null],
    ],
  ],
  [
    "numbers as text, and texts that a sheet could not have stored",
    ["2.31", "3/32", "<0.1"],
    [
      ["2.31", "quantity", 2.31, null, "number-as-text"],
      ["3/32", "quantity", 0.09375, null],
      ["<0.1", "quantity", 0.1, null, "below-limit"],
    ],
  ],
  [
    "dates among dates, one as a bare number",
    [styled(4, 45415), styled(5, 45415.604166666664), { cell: "><v>45292</v>" }],
    [
      ["45415", "date", "2024-05-03", null],
      ["45415.604166666664", "date", "2024-05-03T14:30", null],
      ["45292", "date", "2024-01-01", null, "serial-date"],
    ],
  ],
  [
    "a date among numbers",
    [{ cell: "><v>2</v>" }, { cell: "><v>3</v>" }, styled(4, 45359)],
    [
      ["2", "quantity", 2, null],
      ["3", "quantity", 3, null],
      ["45359", "unreadable", null, null, "date-in-number-column"],
    ],
  ],
  [
    "formulas without a result",
    [{ cell: "><f>B9</f>" }, { cell: "><v>2</v>" }],
    [
      ["", "unreadable", null, null, "formula-without-value"],
      ["2", "quantity", 2, null],
    ],
  ],
  [
    "errors",
    [{ cell: 't="e"><v>#CALC!</v>' }, { cell: "><v>2</v>" }],
    [
      ["#CALC!", "unreadable", null, null, "sheet-error"],
      ["2", "quantity", 2, null],
    ],
  ],
  [
    "yes and no",
    [{ cell: 't="b"><v>1</v>' }, { cell: 't="b"><v>0</v>' }],
    [
      ["TRUE", "text", "yes", null],
      ["FALSE", "text", "no", null],
    ],
  ],
  [
    "a number likely to mean missing",
    [{ cell: "><v>-99</v>" }, { cell: "><v>2</v>" }, { cell: "><v>3</v>" }],
    [
      ["-99", "quantity", -99, null, "maybe-missing-number"],
      ["2", "quantity", 2, null],
      ["3", "quantity", 3, null],
    ],
  ],
  [
    "more digits than a sheet keeps",
    [{ cell: "><v>12345678901234567890</v>" }, { cell: "><v>12</v>" }],
    [
      ["12345678901234567000", "text", "12345678901234567000", null, "precision-lost"],
      ["12", "text", "12", null],
    ],
  ],
])("reads %s", async (_, cells, readings) => {
  const rows = [["piece", "amount"], ...cells.map((cell, at) => [`P-${at}`, cell] as Row)];
  expect(await columnOf(book(rows, { formats }), 1)).toEqual(readings);
});

it("takes the format's unit before the header's, and a number in an id column for its text", async () => {
  const rows = [
    ["piece", "width (mm)"],
    [{ cell: "><v>7</v>" }, styled(3, 2.5)],
    [{ cell: "><v>8</v>" }, { cell: "><v>2</v>" }],
  ];
  const bytes = book(rows, { formats });
  expect(await columnOf(bytes, 0)).toEqual([
    ["7", "text", "7", null],
    ["8", "text", "8", null],
  ]);
  expect(await columnOf(bytes, 1)).toEqual([
    ["2.5", "quantity", 2.5, "cm", "unit-differs"],
    ["2", "quantity", 2, "mm"],
  ]);
});

it("says of every number whose format has another unit than the heading", async () => {
  const rows = [
    ["piece", "width (mm)"],
    ["a", styled(3, 2.5)],
    ["b", styled(3, 3)],
  ];
  expect(await columnOf(book(rows, { formats }), 1)).toEqual([
    ["2.5", "quantity", 2.5, "cm", "unit-differs"],
    ["3", "quantity", 3, "cm", "unit-differs"],
  ]);
});

it("takes a row for a record that holds nothing but a formula without a result", async () => {
  const rows: Row[] = [
    ["piece", "width (mm)"],
    ["a", 2],
    [null, { cell: "><f>B2</f>" }],
  ];
  expect(await columnOf(book(rows), 1)).toEqual([
    ["2", "quantity", 2, "mm"],
    ["", "unreadable", null, null, "formula-without-value"],
  ]);
});

it("takes frequencies for pitches where a note stands among them", async () => {
  const rows = [["piece", "tap"], ["a", "G#2"], ...[110, 220, 330].map((one) => ["b", styled(7, one)] as Row)];
  expect((await columnOf(book(rows, { formats }), 1)).map(([, kind]) => kind)).toEqual(Array(4).fill("pitch"));
});

it("reads frequencies by their format among pitches", async () => {
  const rows = [
    ["piece", "tap"],
    ["a", "G#2"],
    ["b", styled(7, 110)],
    ["c", "A2"],
  ];
  expect((await columnOf(book(rows, { formats }), 1))[1]).toEqual(["110", "pitch", 110, "Hz"]);
});

it("reads ODS by the same rules", async () => {
  const hidden =
    '<style:style style:name="ta2" style:family="table"><style:table-properties table:display="false"/></style:style>';
  const date = {
    cell: '<table:table-cell office:value-type="date" office:date-value="2024-05-03"><text:p>3.5.24</text:p></table:table-cell>',
  };
  const merged = {
    cell: '<table:table-cell office:value-type="string" table:number-rows-spanned="2" table:number-columns-spanned="1"><text:p>spruce</text:p></table:table-cell>',
  };
  const covered = { cell: "<table:covered-table-cell/>" };
  const rows = odsRows([
    ["board", "species", "split", "mass (g)"],
    ["B-1", merged, date, 201.5],
    ["B-2", covered, date, "198,5"],
  ]);
  const tables = `<table:table table:name="lists" table:style-name="ta2">${odsRows([["a"]])}</table:table><table:table table:name="boards">${rows}</table:table>`;
  const { tables: found, setAside, warnings } = await readRecords(odsFile(tables, hidden), "x.ods");
  expect(found.map(({ name, columns }) => [name, columns.map(({ kind }) => kind)])).toEqual([
    ["boards", ["text", "text", "date", "quantity"]],
  ]);
  expect(setAside).toEqual([{ sheet: "lists", code: "hidden-sheet" }]);
  expect(warnings).toEqual([
    { row: 2, col: 4, code: "number-as-text" },
    { row: 2, col: 2, code: "merged-cell" },
  ]);
});

it("tells an old or locked workbook from other files, and a table in a workbook's name from a workbook", async () => {
  const old = new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Uint8Array(504)]);
  expect(await readRecords(old, "x.xls")).toEqual({
    file: "x.xls",
    tables: [],
    setAside: [],
    warnings: [{ code: "old-workbook" }],
  });
  const text = new TextEncoder().encode("id,mass\nB-1,2\n");
  expect((await readRecords(text, "x.xlsx")).tables).toHaveLength(1);
});

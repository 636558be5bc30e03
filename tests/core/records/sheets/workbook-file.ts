// The smallest writer of workbooks that the tests need: parts stored as they are, markup given by the test.
import { crc32 } from "node:zlib";

const XLSX = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";

/** Bytes that are packed already. */
export type Packed = { readonly packed: Uint8Array; readonly flags?: number; readonly checksum?: number };
export type ZipContent = string | Uint8Array | Packed;
const isPacked = (content: ZipContent): content is Packed => typeof content !== "string" && "packed" in content;

/** A zip file of parts. */
export function zipFile(parts: readonly (readonly [name: string, content: ZipContent])[]): Uint8Array {
  const [locals, entries]: [Buffer[], Buffer[]] = [[], []];
  let offset = 0;
  for (const [name, content] of parts) {
    const [title, body] = [Buffer.from(name), Buffer.from(isPacked(content) ? content.packed : content)];
    const local = Buffer.alloc(30);
    local.writeUInt32LE(0x04034b50, 0);
    local.writeUInt16LE(20, 4);
    if (isPacked(content)) {
      local.writeUInt16LE(content.flags ?? 0, 6);
      local.writeUInt16LE(8, 8);
    }
    local.writeUInt32LE((isPacked(content) ? content.checksum : undefined) ?? crc32(body), 14);
    local.writeUInt32LE(body.length, 18);
    local.writeUInt32LE(body.length, 22);
    local.writeUInt16LE(title.length, 26);
    const entry = Buffer.alloc(46);
    entry.writeUInt32LE(0x02014b50, 0);
    local.copy(entry, 6, 4, 30);
    entry.writeUInt32LE(offset, 42);
    locals.push(local, title, body);
    entries.push(entry, title);
    offset += 30 + title.length + body.length;
  }
  const list = Buffer.concat(entries);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(parts.length, 8);
  end.writeUInt16LE(parts.length, 10);
  end.writeUInt32LE(list.length, 12);
  end.writeUInt32LE(offset, 16);
  return new Uint8Array(Buffer.concat([...locals, list, end]));
}

export type XlsxSheet = {
  readonly name?: string;
  readonly state?: string;
  /** Markup of rows; what stands before and after them. */
  readonly rows: string;
  readonly before?: string;
  readonly after?: string;
};
export type XlsxBook = {
  readonly sheets: readonly XlsxSheet[];
  /** Number formats: cell style 1 has the first, and so on; 0 has none. */
  readonly formats?: readonly string[];
  readonly strings?: readonly string[];
  readonly properties?: string;
};

const escaped = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
const relation = (id: number, type: string, target: string) =>
  `<Relationship Id="rId${id}" Type="${RELATIONS}/${type}" Target="${target}"/>`;

/** An XLSX workbook. */
export function xlsxFile({ sheets, formats = [], strings = [], properties = "" }: XlsxBook): Uint8Array {
  const list = sheets.map(
    ({ name, state }, at) =>
      `<sheet name="${escaped(name ?? `Sheet${at + 1}`)}" sheetId="${at + 1}"${state ? ` state="${state}"` : ""} r:id="rId${at + 1}"/>`,
  );
  const codes = formats.map((code, at) => `<numFmt numFmtId="${164 + at}" formatCode="${escaped(code)}"/>`);
  const styles = formats.map((_, at) => `<xf numFmtId="${164 + at}"/>`);
  return zipFile([
    [
      "_rels/.rels",
      `<Relationships xmlns="${PACKAGE}">${relation(1, "officeDocument", "xl/workbook.xml")}</Relationships>`,
    ],
    [
      "xl/workbook.xml",
      `<workbook xmlns="${XLSX}" xmlns:r="${RELATIONS}">${properties}<sheets>${list.join("")}</sheets></workbook>`,
    ],
    [
      "xl/_rels/workbook.xml.rels",
      `<Relationships xmlns="${PACKAGE}">${sheets.map((_, at) => relation(at + 1, "worksheet", `worksheets/sheet${at + 1}.xml`)).join("")}${relation(901, "styles", "styles.xml")}${relation(902, "sharedStrings", "sharedStrings.xml")}</Relationships>`,
    ],
    [
      "xl/styles.xml",
      `<styleSheet xmlns="${XLSX}"><numFmts>${codes.join("")}</numFmts><cellStyleXfs><xf numFmtId="9"/></cellStyleXfs><cellXfs><xf numFmtId="0"/>${styles.join("")}</cellXfs></styleSheet>`,
    ],
    ["xl/sharedStrings.xml", `<sst xmlns="${XLSX}">${strings.map((text) => `<si>${text}</si>`).join("")}</sst>`],
    ...sheets.map(
      ({ rows, before = "", after = "" }, at) =>
        [
          `xl/worksheets/sheet${at + 1}.xml`,
          `<worksheet xmlns="${XLSX}">${before}<sheetData>${rows}</sheetData>${after}</worksheet>`,
        ] as const,
    ),
  ]);
}

/** Rows of XLSX: a string is text, a number a number, null nothing; anything else is given as markup after `<c `. */
export function xlsxRows(rows: readonly (readonly (string | number | null | { readonly cell: string })[])[]): string {
  const cell = (value: string | number | null | { readonly cell: string }, at: string) =>
    value === null
      ? ""
      : typeof value === "number"
        ? `<c r="${at}"><v>${value}</v></c>`
        : typeof value === "string"
          ? `<c r="${at}" t="inlineStr"><is><t>${escaped(value)}</t></is></c>`
          : `<c r="${at}" ${value.cell}</c>`;
  return rows
    .map(
      (row, at) =>
        `<row r="${at + 1}">${row.map((value, col) => cell(value, `${String.fromCharCode(65 + col)}${at + 1}`)).join("")}</row>`,
    )
    .join("");
}

const NAMES =
  'xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0" xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"';

/** An ODS workbook: markup of its tables, of its automatic styles, of its named styles. */
export function odsFile(tables: string, automatic = "", named = ""): Uint8Array {
  return zipFile([
    ["mimetype", "application/vnd.oasis.opendocument.spreadsheet"],
    ["styles.xml", `<office:document-styles ${NAMES}><office:styles>${named}</office:styles></office:document-styles>`],
    [
      "content.xml",
      `<office:document-content ${NAMES}><office:automatic-styles>${automatic}</office:automatic-styles><office:body><office:spreadsheet>${tables}</office:spreadsheet></office:body></office:document-content>`,
    ],
  ]);
}

/** Rows of ODS: a string is text, a number a number, null nothing, anything else markup of a cell. */
export function odsRows(rows: readonly (readonly (string | number | null | { readonly cell: string })[])[]): string {
  const cell = (value: string | number | null | { readonly cell: string }) =>
    value === null
      ? "<table:table-cell/>"
      : typeof value === "number"
        ? `<table:table-cell office:value-type="float" office:value="${value}"><text:p>${value}</text:p></table:table-cell>`
        : typeof value === "string"
          ? `<table:table-cell office:value-type="string"><text:p>${escaped(value)}</text:p></table:table-cell>`
          : value.cell;
  return rows.map((row) => `<table:table-row>${row.map(cell).join("")}</table:table-row>`).join("");
}

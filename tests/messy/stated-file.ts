// A delimited file written together with its one right reading. Every reading is stated by whoever calls, never found by reading.
import type { Reading } from "../../src/core/records/index.ts";

/** A reading as stated: `unit` left out means the column's. */
export type Stated = Omit<Reading, "unit"> & { readonly unit?: string | null };
export type StatedColumn = {
  readonly head: string;
  readonly name: string;
  readonly kind: string;
  readonly unit: string | null;
};
type Coded = { row?: number; col?: number; record?: number; code: string };
export type Expected = {
  readonly file: string;
  readonly tables: {
    name: string;
    columns: { name: string; unit: string | null; kind: string }[];
    rows: Reading[][];
  }[];
  readonly setAside: Coded[];
  readonly warnings: Coded[];
};
export type Encoding = "utf8" | "utf8-bom" | "utf16le-bom" | "utf16be-bom" | "utf16le" | "utf16be" | "cp1252";
export type Written = {
  readonly delimiter: string;
  readonly newline: string;
  readonly encoding: Encoding;
  readonly quoteAll: boolean;
  readonly noLastNewline: boolean;
};

type More = { readonly unit?: string; readonly code?: string; readonly uncertainty?: number };
const stated = (raw: string, kind: Reading["kind"], value: Reading["value"], more: More | string = {}): Stated => ({
  raw,
  kind,
  value,
  ...(typeof more === "string" ? { code: more } : more),
});
export const quantity = (raw: string, value: number, more?: More) => stated(raw, "quantity", value, more);
export const text = (raw: string, value = raw, code?: string) => stated(raw, "text", value, code);
export const date = (raw: string, value: string, code?: string) => stated(raw, "date", value, code);
export const pitch = (raw: string, value: string | number, more?: More) => stated(raw, "pitch", value, more);
export const grade = (raw: string, value: number, unit: string, code?: string) =>
  stated(raw, "grade", value, { unit, ...(code ? { code } : {}) });
export const blank = (raw = "") => stated(raw, "blank", null);
export const unread = (raw: string, code: string) => stated(raw, "unreadable", null, code);

const CP1252 = new Map([..."€‚ƒ„…†‡ˆ‰Š‹Œ"].map((char, at) => [char, 0x80 + at + (at > 0 ? 1 : 0)] as const));
for (const [at, char] of [..."‘’“”•–—˜™š›œ"].entries()) CP1252.set(char, 0x91 + at);

function encoded(content: string, encoding: Encoding): Uint8Array {
  const marked = encoding.endsWith("-bom") ? `\ufeff${content}` : content;
  if (encoding.startsWith("utf8")) return new TextEncoder().encode(marked);
  if (encoding === "cp1252")
    return Uint8Array.from(content, (char) => CP1252.get(char) ?? (char.codePointAt(0) as number));
  const wide = Buffer.from(marked, "utf16le");
  return new Uint8Array(encoding.startsWith("utf16be") ? wide.swap16() : wide);
}

/** Builds the file record by record; `done` gives its bytes and how it is to be read. */
export function statedFile(file: string, written: Written) {
  const expected: Expected = { file, tables: [], setAside: [], warnings: [] };
  const records: (readonly string[])[] = [];
  let columns: readonly StatedColumn[] = [];
  const quoted = (field: string) =>
    written.quoteAll || field.includes(written.delimiter) || /[\r\n]/.test(field) || field.startsWith('"')
      ? `"${field.replaceAll('"', '""')}"`
      : field;
  const builder = {
    fileWarns: (code: string) => void expected.warnings.push({ code }),
    blank: (fields: readonly string[] = [""]) => void records.push(fields),
    aside: (code: string, fields: readonly string[]) => {
      records.push(fields);
      expected.setAside.push({ record: records.length, code });
    },
    table: (heads: readonly StatedColumn[], fields: readonly string[]) => {
      columns = heads;
      records.push(fields);
      const named = heads.map(({ name, unit, kind }) => ({ name, unit, kind }));
      expected.tables.push({ name: file.replace(/\.[^.]+$/, ""), columns: named, rows: [] });
    },
    /** `written`: how many fields of the row are written; `tail`: fields after it; `code`: about the whole row. */
    row: (cells: readonly Stated[], more: { written?: number; tail?: readonly string[]; code?: string } = {}) => {
      const rows = expected.tables.at(-1)?.rows ?? [];
      rows.push(
        cells.map(({ unit, ...cell }, at) => ({
          ...cell,
          unit: unit ?? (cell.kind === "quantity" ? (columns[at]?.unit ?? null) : null),
        })),
      );
      records.push([...cells.map((cell) => cell.raw).slice(0, more.written), ...(more.tail ?? [])]);
      for (const [at, { code }] of cells.entries())
        if (code) expected.warnings.push({ row: rows.length, col: at + 1, code });
      if (more.code) expected.warnings.push({ row: rows.length, code: more.code });
    },
    done: (): { bytes: Uint8Array; expected: Expected } => {
      const lines = records.map((fields) => fields.map(quoted).join(written.delimiter));
      const content = lines.join(written.newline) + (written.noLastNewline ? "" : written.newline);
      return { bytes: encoded(content, written.encoding), expected };
    },
  };
  return builder;
}

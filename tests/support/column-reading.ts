// One column of a table as the reader took it, in words, so that cases can be written as lines: "2,4 cm => 2.4 cm !unit-differs".
import { type Reading, type ReadOptions, type ReadResult, readTable } from "../../src/core/records/index.ts";
import { rowsOf } from "./rows-of.ts";

const quoted = (field: string) => (/["\t\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field);
const rounded = (value: number) => String(Number(value.toPrecision(12)));

/** A reading in words: blank, !code, 2.31 mm ±0.02, "text", 2024-05-03, G#2, 4 /5; the code after it. */
export function readingInLine({ kind, value, unit, uncertainty, code }: Reading): string {
  if (kind === "blank" || kind === "unreadable") return `${kind === "blank" ? "blank" : ""}${code ? `!${code}` : ""}`;
  const said = kind === "text" ? JSON.stringify(value) : typeof value === "number" ? rounded(value) : String(value);
  const parts = [said, unit ?? "", uncertainty === undefined ? "" : `±${rounded(uncertainty)}`, code ? `!${code}` : ""];
  return parts.filter((part) => part !== "").join(" ");
}

const bytes = (text: string) => new TextEncoder().encode(text);

/** Warnings about whole columns, rows or the file: "col 2 mixed-units", "row 3 short-row", "no-header". */
const warningsInLines = ({ warnings }: ReadResult): string[] =>
  warnings
    .filter(({ row, col }) => row === undefined || col === undefined)
    .map(({ table, row, col, code }) =>
      [table ? `table ${table}` : "", row ? `row ${row}` : "", col ? `col ${col}` : "", code].filter(Boolean).join(" "),
    );

/**
 * The lines of a case as they were read: "header => name kind unit !warning", then "raw => reading". The column stands
 * beside one of plain names, parted by tabs.
 */
export function columnReading(lines: readonly string[], options: ReadOptions = {}): string[] {
  const [header = "", ...cells] = lines.map((line) => line.split(" => ")[0] ?? "");
  const text = [`plank\t${quoted(header)}`, ...cells.map((cell, at) => `P${at + 1}\t${quoted(cell)}`), ""].join("\n");
  const result = readTable(bytes(text), "case.tsv", { delimiter: "\t", ...options });
  const column = result.tables[0]?.columns[1];
  const rows = result.tables[0] ? rowsOf(result.tables[0]) : [];
  const warnings = result.warnings.filter(({ row, col }) => row === undefined && col === 2);
  const head = [column?.name, column?.kind, column?.unit ?? "", ...warnings.map(({ code }) => `!${code}`)];
  return [
    `${header} => ${head.filter((part) => part !== "").join(" ")}`,
    ...rows.map((row) => `${row[1]?.raw} => ${row[1] ? readingInLine(row[1]) : "no cell"}`),
  ];
}

/**
 * A file as it was read, line by line: "boards: board text | mass quantity g", its rows, what is set aside, what is warned of.
 */
export function fileReading(content: string | Uint8Array, name = "case.csv", options: ReadOptions = {}): string[] {
  const result = readTable(typeof content === "string" ? bytes(content) : content, name, options);
  const tables = result.tables.flatMap((table) => [
    `${table.name}: ${table.columns.map(({ name, kind, unit }) => `${name} ${kind}${unit ? ` ${unit}` : ""}`).join(" | ")}`,
    ...rowsOf(table).map((row) => row.map(readingInLine).join(" | ")),
  ]);
  const aside = [...result.setAside].sort((a, b) => (a.record ?? 0) - (b.record ?? 0));
  return [...tables, ...aside.map(({ record, code }) => `aside ${record} ${code}`), ...warningsInLines(result)];
}

// What one cell would be read as under an answer: the reader itself says it, on a table of that cell alone.
import { readingAt } from "../cells.ts";
import type { ReadOptions } from "../read-options.ts";
import { readTable } from "../read-table.ts";
import { readingInWords } from "../reading-in-words.ts";

const MONTHS = "January February March April May June July August September October November December".split(" ");

/** "2024-05-03" -> "3 May 2024": the month as a word, so that no order of numbers can be mistaken. */
function dateInWords(date: string): string {
  const [year, month, day] = date.slice(0, 10).split("-");
  const name = MONTHS[Number(month) - 1];
  return name === undefined || day === undefined ? date : `${Number(day)} ${name} ${year}`;
}

/** The reading in words of a raw text under the heading, "not readable" where it has none. */
export function readAs(raw: string, heading: string, options: ReadOptions): string {
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  const bytes = new TextEncoder().encode(`${quoted(heading)}\n${quoted(raw)}\n`);
  const { encoding: _, ...rest } = options;
  const cells = readTable(bytes, "one.csv", { ...rest, delimiter: "\t" }).tables[0]?.columns[0]?.cells;
  if (cells === undefined || cells.length === 0) return "not readable";
  const reading = readingAt(cells, 0);
  return reading.kind === "date" && typeof reading.value === "string"
    ? dateInWords(reading.value)
    : readingInWords(reading);
}

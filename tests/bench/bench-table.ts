// The benchmark as people read it: a row a line, columns under each other.
import type { BenchLine } from "./bench-line.ts";

/** Three figures, so that 0.0123 and 1,230 both say what was measured. */
const figures = (value: number): string => (value >= 100 ? value.toFixed(0) : Number(value.toPrecision(3)).toString());

const cellsOf = ({ name, baseline, ours, theirs, aim }: BenchLine): readonly string[] => [
  name,
  `${figures(ours / theirs)} x`,
  baseline,
  `${figures(ours)} ms`,
  `${figures(theirs)} ms`,
  aim === null ? "no aim set" : `${aim.words}: ${aim.within ? "within" : "over"}`,
];
const HEADINGS = ["what", "ratio", "of (baseline in this run)", "ours", "baseline", "aim"];
const NUMBERS = new Set([1, 3, 4]);

/** All lines under one heading, with their notes after them. */
export function benchTable(lines: readonly BenchLine[]): string {
  const rows = [HEADINGS, ...lines.map(cellsOf)];
  const widths = HEADINGS.map((_, at) => Math.max(...rows.map((row) => (row[at] ?? "").length)));
  const written = rows.map((row) =>
    row
      .map((cell, at) => (NUMBERS.has(at) ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0)))
      .join("  ")
      .trimEnd(),
  );
  const [heading = "", ...body] = written;
  const notes = lines.flatMap(({ name, note }) => (note === undefined ? [] : [`${name}: ${note}`]));
  return [heading, "-".repeat(heading.length), ...body, "", ...notes, ""].join("\n");
}

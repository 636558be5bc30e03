// A statistical reference case as it lies on the disk, and what its options say about its columns.
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import Papa from "papaparse";

export type Expected = {
  readonly value: unknown;
  readonly rtol?: number;
  readonly atol?: number;
  readonly of?: string;
  readonly at?: number;
};
export type StatsCase = {
  readonly id: string;
  readonly method: string;
  readonly data: Readonly<Record<string, unknown>>;
  readonly options: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, Expected>>;
};
export type Inputs = Readonly<Record<string, unknown>>;

/** The method that a case is for: a degenerate case names it in its options. */
export const methodOf = ({ method, options }: StatsCase): string =>
  method === "degenerate" ? String(options.of) : method;

const read = (list: unknown): unknown =>
  Array.isArray(list)
    ? list.map((one: unknown) =>
        one === "Infinity" ? Number.POSITIVE_INFINITY : one === "-Infinity" ? Number.NEGATIVE_INFINITY : one,
      )
    : list;

/** The columns of a case, by the case's own names. */
export const columnsOf = ({ data }: StatsCase): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(data).map(([name, list]) => [name, read(list)]));

/** Both sides of `y ~ x1 + x2`: the response, the predictors by name, and whether there is a constant. */
export function modelOf({ options }: StatsCase): {
  readonly response: string;
  readonly predictors: readonly string[];
  readonly constant: boolean;
} {
  const [response = "", right = ""] = String(options.model ?? "")
    .split("~")
    .map((side) => side.trim());
  const terms = right
    .replace(/-\s*1\s*(?=\+|$)/g, "+ 0")
    .split("+")
    .map((term) => term.trim())
    .filter((term) => term !== "");
  return { response, predictors: terms.filter((term) => !/^[01]$/.test(term)), constant: !terms.includes("0") };
}

/** The columns of a CSV file, numbers where every cell is one; an empty cell is missing, and so is R's NA. */
export function columnsOfCsv(path: string): Readonly<Record<string, readonly (number | string | null)[]>> {
  const text = readFileSync(path, "utf8")
    .replace(/^\ufeff/, "")
    .trim();
  const [head = [], ...rows] = Papa.parse(text, {
    delimiter: ",",
    newline: "",
    quoteChar: '"',
    header: false,
    skipEmptyLines: false,
  }).data;
  return Object.fromEntries(
    head.map((name, at) => {
      const cells = rows.map((row) => (row[at] === "NA" ? "" : (row[at] ?? "")));
      const isNumeric = cells.every((cell) => cell === "" || Number.isFinite(Number(cell)));
      return [name, cells.map((cell) => (cell === "" ? null : isNumeric ? Number(cell) : cell))];
    }),
  );
}

/** The case with its columns: those that lie in a file are read; the file is named relative to the folder above the case's own. */
export function withData(one: StatsCase, path: string): StatsCase {
  const file = one.data.file;
  return typeof file === "string" ? { ...one, data: columnsOfCsv(join(dirname(dirname(path)), file)) } : one;
}

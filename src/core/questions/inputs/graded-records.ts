import { declined, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { type CodedColumns, codedColumns } from "./coded-columns.ts";

export type GradedRecords = {
  /** Grades that occur, lowest first. */
  readonly levels: readonly string[];
  readonly codes: Int32Array;
  readonly weights: Float64Array;
  readonly design: CodedColumns;
  readonly setAside: number;
};

const PREDICTORS = ["x", "x1", "x2", "x3", "x4", "x5", "x6", "x7", "x8"];
const isMissing = (value: unknown): boolean =>
  value === null || value === undefined || (typeof value === "number" && Number.isNaN(value));
const texts = (value: unknown): readonly string[] => (Array.isArray(value) ? value.map(String) : []);
const listOf = (value: unknown): readonly unknown[] | null =>
  value instanceof Float64Array ? [...value] : Array.isArray(value) ? value : null;

/** Grades of y in the order of `levels` (else numbers by size, words by name), with the quantities and words that may explain them; rows with a gap set aside. */
export function gradedRecords(inputs: MethodInputs): Outcome<GradedRecords> {
  const given = PREDICTORS.filter((name) => inputs[name] !== undefined);
  if (given.length === 0) return declined("input-missing", { name: "x1", meaning: "what may explain the grade" });
  const names = ["y", ...given, ...(inputs.weights === undefined ? [] : ["weights"])];
  const lists = names.map((name) => listOf(inputs[name]));
  const length = lists[0]?.length ?? 0;
  const odd = lists.findIndex((list) => list === null || list.length !== length);
  if (odd >= 0) return declined("out-of-domain", { name: names[odd] ?? "y", needed: "a list as long as the others" });
  const whole = lists as readonly (readonly unknown[])[];
  const rows = Array.from({ length }, (_, row) => row).filter((row) => whole.every((list) => !isMissing(list[row])));
  const column = (at: number) => rows.map((row) => whole[at]?.[row]);
  for (const [at, name] of names.entries())
    if (column(at).some((value) => typeof value === "number" && !Number.isFinite(value)))
      return declined("not-finite", { name });
  const weights = inputs.weights === undefined ? rows.map(() => 1) : column(names.length - 1);
  if (!weights.every((weight): weight is number => typeof weight === "number" && weight >= 0))
    return declined("out-of-domain", { name: "weights", needed: "numbers of zero or more" });
  const y = column(0);
  const counted = y.filter((_, at) => (weights[at] ?? 0) > 0);
  const stated = texts(inputs.levels);
  const present = [...new Set(counted.map(String))];
  const unknown = present.find((grade) => stated.length > 0 && !stated.includes(grade));
  if (unknown !== undefined)
    return declined("out-of-domain", { name: `grade ${unknown}`, needed: "one of the levels" });
  const isNumeric = present.every((grade) => grade.trim() !== "" && Number.isFinite(Number(grade)));
  const levels =
    stated.length > 0
      ? stated.filter((grade) => present.includes(grade))
      : present.sort(isNumeric ? (a, b) => Number(a) - Number(b) : undefined);
  if (levels.length < 2) return declined("one-group", { column: "y", group: levels[0] ?? "none" });
  if (levels.length > 60) return declined("too-large", { name: "y", most: "60 different grades" });
  const columns: Float64Array[] = [];
  const columnNames: string[] = [];
  for (const [at, name] of given.entries()) {
    const coded = codedColumns(name, column(at + 1), texts(inputs[`${name}_levels`]));
    if (!coded.ok) return coded;
    columns.push(...coded.value.columns);
    columnNames.push(...coded.value.names);
  }
  const need = levels.length - 1 + columns.length + 1;
  if (counted.length < need) return declined("too-few-records", { have: counted.length, need });
  const place = new Map(levels.map((level, code) => [level, code]));
  return succeeded({
    levels,
    codes: Int32Array.from(y, (grade) => place.get(String(grade)) ?? 0),
    weights: Float64Array.from(weights),
    design: { columns, names: columnNames },
    setAside: length - rows.length,
  });
}

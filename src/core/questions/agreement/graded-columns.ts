import { declined, type Outcome, succeeded } from "../../base/index.ts";

/** Grades of several people for the same pieces: places among the levels (-1 for a missing grade), the levels, and their numbers where they are numbers. */
export type GradedColumns = {
  readonly codes: readonly Int32Array[];
  readonly levels: readonly string[];
  /** Null where a level is a word. */
  readonly numbers: Float64Array | null;
  /** Whether the levels have an order: they were given, or are numbers. */
  readonly isOrdered: boolean;
};

const isMissing = (value: unknown): boolean =>
  value === null || value === undefined || (typeof value === "number" && Number.isNaN(value));
const isNumber = (text: string): boolean => text.trim() !== "" && Number.isFinite(Number(text));
/** One spelling of a grade: 4, "4" and "4.0" are the same. */
const spelled = (value: unknown): string => {
  const text = String(value).trim();
  return isNumber(text) ? String(Number(text)) : text;
};
const listOf = (given: unknown): readonly unknown[] | null =>
  Array.isArray(given) ? given : given instanceof Float64Array ? [...given] : null;

/**
 * Columns of grades, numbers or words, of one length. given: a list for each person; names: theirs, for a refusal. levels: all grades, lowest first,
 * or undefined: then those that occur, numbers by size and words by code point (which is no order of merit).
 * Declines lists of unlike length, an infinite grade and one that is not among the levels.
 */
export function gradedColumns(
  given: readonly unknown[],
  names: readonly string[],
  levels: unknown,
): Outcome<GradedColumns> {
  const lists = given.map(listOf);
  const length = lists[0]?.length ?? 0;
  for (const [at, list] of lists.entries())
    if (!list || list.length !== length)
      return declined("out-of-domain", { name: names[at] ?? "grades", needed: "a list as long as the others" });
  const columns = lists.map((list) => (list ?? []).map((each) => (isMissing(each) ? null : spelled(each))));
  const found = [...new Set(columns.flat())].filter((each): each is string => each !== null);
  if (found.some((each) => /^[+-]?Infinity$/.test(each))) return declined("not-finite", { name: "a grade" });
  const listed = listOf(levels)
    ?.filter((each) => !isMissing(each))
    .map(spelled);
  const isNumeric = (listed ?? found).every(isNumber);
  const order = listed
    ? [...new Set(listed)]
    : found.sort(isNumeric ? (a, b) => Number(a) - Number(b) : (a, b) => (a < b ? -1 : 1));
  const place = new Map(order.map((level, at) => [level, at]));
  const stranger = found.find((each) => !place.has(each));
  if (stranger !== undefined)
    return declined("out-of-domain", {
      name: `the grade ${stranger.slice(0, 40)}`,
      needed: `one of the levels ${order.slice(0, 12).join(", ")}`,
    });
  return succeeded({
    codes: columns.map((column) => Int32Array.from(column, (each) => (each === null ? -1 : (place.get(each) ?? -1)))),
    levels: order,
    numbers: isNumeric ? Float64Array.from(order, Number) : null,
    isOrdered: listed !== undefined || isNumeric,
  });
}

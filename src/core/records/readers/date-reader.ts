// Columns of dates: ISO, dotted, slashed (by the column's evidence which number is the day), named months, serial numbers.
import type { Reading } from "../reading.ts";
import { calendar, isDay, isoDay } from "./calendar.ts";
import { cellsWith } from "./cells-with.ts";
import type { ColumnCell, ColumnReader, ColumnSource } from "./column-source.ts";
import { hasWord, rowsOf } from "./column-source.ts";
import type { DateParts } from "./date-parts.ts";
import { dateParts } from "./date-parts.ts";
import { asText, reading, unreadable } from "./field.ts";

const YEAR_WORDS = new Set(["year", "jahr", "año", "année"]);
const DATE_WORDS = new Set(["date", "day", "datum", "fecha", "jour", "when"]);

type Order = Extract<DateParts, { form: "order" }>;
const dayFirstWorks = (parts: Order) => isDay(parts.year, parts.second, parts.first);
const monthFirstWorks = (parts: Order) => isDay(parts.year, parts.first, parts.second);
const works = (parts: Order) => dayFirstWorks(parts) || monthFirstWorks(parts);

/** Whether a number can be a day and no month: the 30 of "30/2/2024" too, though there is no such day. */
const isDayOnly = (number: number) => number > 12 && number <= 31;

/** Day first, month first, or not known; and whether both occur. */
function orderOf(all: readonly DateParts[], given: boolean | undefined): { dayFirst: boolean | null; mixed: boolean } {
  if (given !== undefined) return { dayFirst: given, mixed: false };
  let dayFirst = false;
  let monthFirst = false;
  for (const parts of all) {
    if (parts.form !== "order") continue;
    if (isDayOnly(parts.first) && parts.second <= 12) dayFirst = true;
    if (isDayOnly(parts.second) && parts.first <= 12) monthFirst = true;
  }
  return { dayFirst: dayFirst === monthFirst ? null : dayFirst, mixed: dayFirst && monthFirst };
}

function readOrder(cell: ColumnCell, parts: Order, dayFirst: boolean | null): Reading {
  const { first, second, year, time } = parts;
  const either = dayFirst === null && first <= 12 && second <= 12 && first !== second;
  if (either) return unreadable(cell.field, "ambiguous-date");
  const asDayFirst = dayFirst ?? first > 12;
  if (!(asDayFirst ? dayFirstWorks(parts) : monthFirstWorks(parts))) return unreadable(cell.field, "unreadable-date");
  const [month, day] = asDayFirst ? [second, first] : [first, second];
  return reading(
    cell.field,
    "date",
    isoDay(year, month, day) + time,
    null,
    parts.twoDigits ? "two-digit-year" : undefined,
  );
}

function readDate(cell: ColumnCell, parts: DateParts, dayFirst: boolean | null): Reading {
  switch (parts.form) {
    case "day":
      return reading(cell.field, "date", parts.value, null, parts.twoDigits ? "two-digit-year" : undefined);
    case "month":
    case "year":
      return reading(cell.field, "date", parts.value, null, "partial-date");
    case "order":
      return readOrder(cell, parts, dayFirst);
    case "serial":
      return reading(cell.field, "date", calendar(parts.serial), null, "serial-date");
    case "words":
      return asText(cell.field, "date-in-words");
    default:
      return unreadable(cell.field, "unreadable-date");
  }
}

/** Partial dates are no surprise where all dates of the column are equally partial; one that asks for its day is whole. */
function withoutEqualPartial(cells: readonly Reading[]): Reading[] {
  const lengths = new Set(cells.filter((cell) => cell.kind === "date").map((cell) => String(cell.value).length));
  const [only = 0] = lengths;
  if (lengths.size !== 1 || only > 7 || cells.some(({ code }) => code === "ambiguous-date")) return [...cells];
  return cells.map((cell) => {
    if (cell.code !== "partial-date") return cell;
    const { code: _, ...rest } = cell;
    return rest;
  });
}

function read(source: ColumnSource) {
  const parts = source.cells.map((cell) =>
    cell.special === null ? dateParts(cell.field.text) : ({ form: "none" } as const),
  );
  const { dayFirst, mixed } = orderOf(parts, source.options.dayFirst);
  const partsOf = new Map(source.cells.map((cell, at) => [cell, parts[at] ?? ({ form: "none" } as const)]));
  const cells = cellsWith(source, (cell) => readDate(cell, partsOf.get(cell) ?? { form: "none" }, dayFirst));
  return { unit: source.unit, cells: withoutEqualPartial(cells), warnings: mixed ? ["mixed-date-orders"] : [] };
}

/** Rows with dates. Beside sure dates also seasons, impossible days, serial numbers, and years unless those are the most by far. */
function fits(source: ColumnSource, counted: readonly ColumnCell[]): number {
  const forms = new Map(counted.map((cell) => [cell, dateParts(cell.field.text)] as const));
  const rowsWith = (holds: (parts: DateParts) => boolean) =>
    rowsOf(counted, (cell) => holds(forms.get(cell) ?? { form: "none" }));
  const sure = rowsWith(
    (parts) => parts.form === "day" || parts.form === "month" || (parts.form === "order" && works(parts)),
  );
  const serials = rowsWith(({ form }) => form === "serial") + source.numerals.serials;
  const years = rowsWith(({ form }) => form === "year") + source.numerals.years;
  const odd = rowsWith(
    (parts) => parts.form === "words" || parts.form === "impossible" || (parts.form === "order" && !works(parts)),
  );
  return (
    sure +
    (sure > 0 ? odd : 0) +
    (sure > 0 || hasWord(source, DATE_WORDS) ? serials : 0) +
    (2 * sure >= years || hasWord(source, YEAR_WORDS) ? years : 0)
  );
}

export const dateReader: ColumnReader = { kind: "date", fits, read };

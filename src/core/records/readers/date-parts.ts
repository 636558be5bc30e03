// What a cell says as a date, before its column has decided which number is the day.
import { isDay, isoDay, isoMonth } from "./calendar.ts";
import { isSeason, monthNames, plainWord } from "./month-names.ts";

export type DateParts =
  | { readonly form: "day" | "month" | "year"; readonly value: string; readonly twoDigits: boolean }
  /** Two numbers of which either may be the day. */
  | {
      readonly form: "order";
      readonly first: number;
      readonly second: number;
      readonly year: number;
      readonly time: string;
      readonly twoDigits: boolean;
    }
  | { readonly form: "serial"; readonly serial: number }
  | { readonly form: "words" | "impossible" | "none" };

const NONE: DateParts = { form: "none" };
const IMPOSSIBLE: DateParts = { form: "impossible" };
const LONGEST = 40;
/** In which every day exists that exists in any year. */
const LEAP_YEAR = 2000;

const fullYear = (digits: string): number =>
  digits.length > 2 ? Number(digits) : Number(digits) + (Number(digits) < 50 ? 2000 : 1900);

/** "T14:30" of hours, minutes and seconds; seconds only if not 00. Null where there is no such time. */
function timeOf(hours: string | undefined, minutes: string | undefined, seconds: string | undefined): string | null {
  if (hours === undefined || minutes === undefined) return "";
  if (Number(hours) > 23 || Number(minutes) > 59 || Number(seconds ?? 0) > 59) return null;
  return `T${hours.padStart(2, "0")}:${minutes}${seconds !== undefined && seconds !== "00" ? `:${seconds}` : ""}`;
}

function day(year: number, month: number, dayOfMonth: number, time: string | null, twoDigits: boolean): DateParts {
  return time !== null && isDay(year, month, dayOfMonth)
    ? { form: "day", value: isoDay(year, month, dayOfMonth) + time, twoDigits }
    : IMPOSSIBLE;
}

const ISO = /^(\d{4})([-/])(\d{1,2})\2(\d{1,2})(?:[T ](\d{1,2}):(\d{2})(?::(\d{2}))?)?$/;
const NUMBERS = /^(\d{1,2})([-/.]) ?(\d{1,2})\2 ?(\d{4}|\d{2})(?:[T ](\d{1,2}):(\d{2})(?::(\d{2}))?)?$/;

function fromNumbers(text: string): DateParts | null {
  const iso = ISO.exec(text);
  if (iso) return day(Number(iso[1]), Number(iso[3]), Number(iso[4]), timeOf(iso[5], iso[6], iso[7]), false);
  const found = NUMBERS.exec(text);
  if (found) {
    const [, first = "", mark, second = "", years = ""] = found;
    const time = timeOf(found[5], found[6], found[7]);
    const year = fullYear(years);
    if (mark === ".") return day(year, Number(second), Number(first), time, years.length === 2);
    return time === null
      ? IMPOSSIBLE
      : { form: "order", first: Number(first), second: Number(second), year, time, twoDigits: years.length === 2 };
  }
  const month = /^(\d{4})-(\d{2})$/.exec(text);
  if (month)
    return Number(month[2]) >= 1 && Number(month[2]) <= 12
      ? { form: "month", value: isoMonth(Number(month[1]), Number(month[2])), twoDigits: false }
      : NONE;
  const bare = /^(\d{1,2})\. ?(\d{1,2})\.$/.exec(text);
  if (bare) return isDay(LEAP_YEAR, Number(bare[2]), Number(bare[1])) ? { form: "words" } : IMPOSSIBLE;
  if (/^\d{5}$/.test(text))
    return Number(text) >= 36526 && Number(text) <= 54788 ? { form: "serial", serial: Number(text) } : NONE;
  return /^[12]\d{3}$/.test(text) ? { form: "year", value: text, twoDigits: false } : null;
}

type Token = { readonly sort: "number" | "month" | "season" | "word"; readonly text: string; readonly month: number };
const FILLERS = new Set(["de", "del", "of"]);

function tokens(text: string): Token[] | null {
  const parts = text.split(/[\s.,/-]/).filter((part) => part !== "");
  if (parts.length > 6) return null;
  return parts.flatMap((part): Token[] => {
    const plain = plainWord(part);
    const number = /^(\d{1,4})(?:st|nd|rd|th|er)?$/.exec(plain);
    if (number) return [{ sort: "number", text: number[1] ?? "", month: 0 }];
    const month = monthNames(plain);
    if (month > 0) return [{ sort: "month", text: part, month }];
    return FILLERS.has(plain) ? [] : [{ sort: isSeason(plain) ? "season" : "word", text: part, month: 0 }];
  });
}

function fromNames(text: string): DateParts {
  const found = tokens(text);
  if (!found || found.some((token) => token.sort === "word")) return NONE;
  const sorts = found.map((token) => token.sort).join(" ");
  const month = found.find((token) => token.sort === "month")?.month ?? 0;
  const numbers = found.filter((token) => token.sort === "number").map((token) => token.text);
  if (sorts.includes("season"))
    return (month > 0 || numbers.some((one) => one.length === 4)) && found.length <= 4 ? { form: "words" } : NONE;
  const [first = "", second = ""] = numbers;
  if (sorts === "number month number" || sorts === "month number number") {
    const yearFirst = first.length === 4 && second.length <= 2 && sorts.startsWith("number");
    const [dayText, yearText] = yearFirst ? [second, first] : [first, second];
    if (dayText.length > 2 || (yearText.length !== 4 && yearText.length !== 2)) return IMPOSSIBLE;
    return day(fullYear(yearText), month, Number(dayText), "", yearText.length === 2);
  }
  if (sorts === "month number" && first.length === 4)
    return { form: "month", value: isoMonth(Number(first), month), twoDigits: false };
  if (sorts !== "month number" && sorts !== "number month") return NONE;
  return isDay(LEAP_YEAR, month, Number(first)) ? { form: "words" } : IMPOSSIBLE;
}

/** What a text says as a date. */
export function dateParts(text: string): DateParts {
  if (text.length > LONGEST) return NONE;
  return fromNumbers(text) ?? (/\p{L}/u.test(text) && (/\d/.test(text) || text.includes(" ")) ? fromNames(text) : NONE);
}

/** Whether a text in a column of numbers is a date, likely a fraction that a spreadsheet turned: 03-Mar, Mar-32, 1/8/2024. */
export function isLikeDate(text: string): boolean {
  if (!/\d/.test(text) || text.length > LONGEST) return false;
  const parts = dateParts(text);
  if (parts.form === "day" || parts.form === "order" || parts.form === "impossible") return true;
  return (parts.form === "month" || parts.form === "words") && /\p{L}/u.test(text);
}

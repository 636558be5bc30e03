// The proleptic Gregorian calendar, without a clock.
const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Whether such a day exists. */
export const isDay = (year: number, month: number, day: number): boolean =>
  month >= 1 && month <= 12 && day >= 1 && day <= (LENGTHS[month - 1] ?? 0) + (month === 2 && isLeap(year) ? 1 : 0);

const two = (value: number) => String(value).padStart(2, "0");

/** ISO 8601 text of a day. */
export const isoDay = (year: number, month: number, day: number): string =>
  `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`;
/** ISO 8601 text of a month. */
export const isoMonth = (year: number, month: number): string => `${String(year).padStart(4, "0")}-${two(month)}`;

/**
 * The day of a spreadsheet's serial number in the 1900 system; valid from 61 (1 March 1900) on.
 * Source: ECMA-376 part 1, 18.17.4.1; days to civil date after H. Hinnant, "chrono-compatible low-level date algorithms" (2013).
 */
export function calendar(serial: number): string {
  const days = serial - 25569 + 719468;
  const era = Math.floor(days / 146097);
  const dayOfEra = days - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  return isoDay(
    yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1,
  );
}

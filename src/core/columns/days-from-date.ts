const DATE = /^(\d{4})(?:-(\d{2}))?(?:-(\d{2}))?(?:T(\d{2}):(\d{2})(?::(\d{2}))?)?$/;

/**
 * Days since 1970-01-01 of an ISO date, proleptic Gregorian; the time of day as a fraction. A date as precise as a month or a year counts from its
 * first day. text: "2024", "2024-05", "2024-05-03", "2024-05-03T14:30". NaN for anything else, impossible days too.
 * @example daysFromDate("2000-03-01") -> 11017
 */
export function daysFromDate(text: string): number {
  const found = DATE.exec(text);
  if (!found) return Number.NaN;
  const [year, month, day] = [Number(found[1]), Number(found[2] ?? 1), Number(found[3] ?? 1)];
  if (month < 1 || month > 12 || day < 1) return Number.NaN;
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const longest = month === 2 ? (leap ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
  if (day > longest) return Number.NaN;
  const [hours, minutes, seconds] = [Number(found[4] ?? 0), Number(found[5] ?? 0), Number(found[6] ?? 0)];
  if (hours > 23 || minutes > 59 || seconds > 59) return Number.NaN;
  return dayNumber(year, month, day) + (hours * 3600 + minutes * 60 + seconds) / 86_400;
}

/** Source: H. Hinnant, "chrono-compatible low-level date algorithms", days_from_civil. */
function dayNumber(year: number, month: number, day: number): number {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  return (
    era * 146_097 + yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear - 719_468
  );
}

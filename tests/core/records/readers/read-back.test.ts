// A date written in any of the spellings of four languages is read back as itself; note names and grades likewise.
import fc from "fast-check";
import { columnReading } from "../../../support/column-reading.ts";
import { law } from "../../../support/law.ts";

const MONTHS = {
  English: "January February March April May June July August September October November December",
  short: "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec",
  Spanish: "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
  German: "Januar Februar März April Mai Juni Juli August September Oktober November Dezember",
  French: "janvier février mars avril mai juin juillet août septembre octobre novembre décembre",
};
const two = (value: number) => String(value).padStart(2, "0");
type Day = { readonly year: number; readonly month: number; readonly day: number };
const name = (language: keyof typeof MONTHS, { month }: Day) => MONTHS[language].split(" ")[month - 1] ?? "";

const SPELLINGS: readonly ((date: Day) => string)[] = [
  ({ year, month, day }) => `${year}-${two(month)}-${two(day)}`,
  ({ year, month, day }) => `${year}/${two(month)}/${two(day)}`,
  ({ year, month, day }) => `${day}.${month}.${year}`,
  ({ year, month, day }) => `${two(day)}.${two(month)}.${year}`,
  (date) => `${date.day} ${name("English", date)} ${date.year}`,
  (date) => `${name("English", date)} ${date.day}, ${date.year}`,
  (date) => `${date.day}-${name("short", date)}-${date.year}`,
  (date) => `${date.day}. ${name("German", date)} ${date.year}`,
  (date) => `${date.day} de ${name("Spanish", date)} de ${date.year}`,
  (date) => `${date.day === 1 ? "1er" : date.day} ${name("French", date)} ${date.year}`,
  (date) => `${date.day} ${name("French", date).toUpperCase()} ${date.year}`,
  (date) => `${date.day} ${name("German", date).normalize("NFD")} ${date.year}`,
];
const anyDay = fc
  .date({ min: new Date("1900-01-01"), max: new Date("2099-12-31"), noInvalidDate: true })
  .map((date): Day => ({ year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() }));
const iso = ({ year, month, day }: Day) => `${year}-${two(month)}-${two(day)}`;

law("a date in any spelling is read back", [anyDay, fc.constantFrom(...SPELLINGS)], (date, spelling) => {
  const lines = ["split => split date", `${spelling(date)} => ${iso(date)}`];
  return JSON.stringify(columnReading(lines)) === JSON.stringify(lines);
});

law("slashes are read back by the maker's answer", [anyDay, fc.boolean()], (date, dayFirst) => {
  const [first, second] = dayFirst ? [date.day, date.month] : [date.month, date.day];
  const lines = ["split => split date", `${first}/${second}/${date.year} => ${iso(date)}`];
  return JSON.stringify(columnReading(lines, { dayFirst })) === JSON.stringify(lines);
});

law(
  "a note name with octave and cents is read back, whatever its sign for sharp and flat",
  [
    fc.constantFrom(..."CDEFGAB"),
    fc.constantFrom("", "#", "b"),
    fc.nat(9),
    fc.integer({ min: -50, max: 50 }),
    fc.boolean(),
  ],
  (letter, accidental, octave, cents, typeset) => {
    const sign = typeset ? accidental.replace("#", "♯").replace("b", "♭") : accidental;
    const about = cents === 0 ? "" : ` ${cents > 0 ? "+" : typeset ? "−" : "-"}${Math.abs(cents)}`;
    const shown = cents === 0 ? "" : ` ${cents > 0 ? "+" : "-"}${Math.abs(cents)}c`;
    const written = `${letter}${sign}${octave}${about}${about && (typeset ? " cents" : "c")}`;
    const lines = ["tap pitch => tap pitch pitch", `${written} => ${letter}${accidental}${octave}${shown}`];
    return JSON.stringify(columnReading(lines)) === JSON.stringify(lines);
  },
);

law(
  "a grade out of so many is read back",
  [fc.integer({ min: 1, max: 100 }), fc.nat(99), fc.constantFrom("/", " / ", " of ", " out of ")],
  (scale, value, between) => {
    const lines = ["rating => rating grade", `${value}${between}${scale} => ${value} /${scale}`];
    return JSON.stringify(columnReading(lines)) === JSON.stringify(lines);
  },
);

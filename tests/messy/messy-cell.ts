// One clean value written untidily, with the reading that is then right. What is right comes from the value and the mess chosen.
import type { CleanColumn, CleanValue, Dice } from "./clean-table.ts";
import { blank, date, grade, pitch, quantity, type Stated, text, unread } from "./stated-file.ts";

export type Style = { readonly mark: "," | "."; readonly date: "iso" | "dots" | "dmy" | "mdy" };

const MISSING = ["n/a", "-", "–", "?", "tbd", "not measured", "N.A.", "k.A.", "s/d"];
const YES_NO = new Map([
  ["yes", ["yes", "Y", "ja", "sí", "oui", "TRUE"]],
  ["no", ["no", "N", "nein", "No", "non", "false"]],
]);
const OTHER_UNITS = new Map([
  ["mm", ["cm cm", "in [in_i]", "thou [mil_i]"]],
  ["g", ["kg kg", "oz [oz_av]"]],
  ["Hz", ["kHz kHz"]],
]);
const MONTHS = [
  "January Jan enero janvier Januar",
  "February Feb febrero février Februar",
  "March Mar marzo mars März",
  "April Apr abril avril April",
  "May May mayo mai Mai",
  "June Jun junio juin Juni",
  "July Jul julio juillet Juli",
  "August Aug agosto août August",
  "September Sep septiembre septembre September",
  "October Oct octubre octobre Oktober",
  "November Nov noviembre novembre November",
  "December Dec diciembre décembre Dezember",
].map((names) => names.split(" "));

/** A number with the file's decimal mark. */
export const written = (value: number, { mark }: Style): string => String(value).replace(".", mark);

function messyQuantity(value: number, unit: string, style: Style, die: Dice, mess: number): Stated {
  const plain = written(value, style);
  if (!die.chance(mess)) return quantity(die.chance(0.06) ? ` ${plain} ` : plain, value);
  const ways: (() => Stated)[] = [
    () => blank(die.pick(MISSING)),
    () => quantity(`~${plain}`, value, { code: "approximate" }),
    () => quantity(`<${plain}`, value, { code: "below-limit" }),
    () => quantity(`> ${plain}`, value, { code: "above-limit" }),
    () => quantity(`${plain} ± ${written(0.25, style)}`, value, { uncertainty: 0.25 }),
    () => {
      const places = (String(value).split(".")[1] ?? "").length;
      const digits = 1 + die.below(9);
      return quantity(`${plain}(${digits})`, value, { uncertainty: Number(`${digits}e-${places}`) });
    },
    () => {
      const high = Math.round((value + 1) * 100) / 100;
      const more = { uncertainty: (high - value) / 2, code: "range" };
      return quantity(`${plain} - ${written(high, style)}`, (value + high) / 2, more);
    },
    () => quantity(`${plain} ${unit}`, value),
    () => {
      const [spelling, code = ""] = die.pick(OTHER_UNITS.get(unit) ?? ["s s"]).split(" ");
      return quantity(`${plain} ${spelling}`, value, { unit: code, code: "unit-differs" });
    },
    () => unread(`${plain} zorks`, "unknown-unit"),
    () => unread(`${die.pick(["O", "l", "I"])}${plain}`, "letter-in-number"),
    () => unread(die.pick(["#DIV/0!", "#N/A", "#VALUE!", "Err:502"]), "sheet-error"),
    () => quantity(`${plain}?`, value, { code: "doubtful" }),
    () => unread(die.pick(["see log", `(12${style.mark}5)`, "lost"]), "unreadable-number"),
  ];
  return (ways[die.below(ways.length)] as () => Stated)();
}

/** An ISO date as the file writes dates. */
export function plainDate(iso: string, style: Style): string {
  const [year = "", month = "", day = ""] = iso.split("-");
  const ways = {
    iso,
    dots: `${Number(day)}.${Number(month)}.${year}`,
    dmy: `${day}/${month}/${year}`,
    mdy: `${month}/${day}/${year}`,
  };
  return ways[style.date];
}

function messyDate(iso: string, style: Style, die: Dice, mess: number): Stated {
  if (!die.chance(mess)) return date(plainDate(iso, style), iso);
  const [year = "", month = "", day = ""] = iso.split("-");
  const ways: (() => Stated)[] = [
    () => blank(die.pick(["n/a", "tbd", "?"])),
    () => date(`${Number(day)} ${die.pick(MONTHS[Number(month) - 1] ?? [])} ${year}`, iso),
    () => date(`${day}.${month}.${year.slice(2)}`, iso, "two-digit-year"),
    () => date(`${year}-${month}`, `${year}-${month}`, "partial-date"),
    () => {
      const words = `${die.pick(["spring", "Sommer", "otoño"])} ${year}`;
      return text(words, words, "date-in-words");
    },
    () => unread(`${year}-02-30`, "unreadable-date"),
  ];
  return (ways[die.below(ways.length)] as () => Stated)();
}

function messyPitch(name: string, die: Dice, mess: number): Stated {
  if (!die.chance(mess)) return pitch(name, name);
  const cents = 1 + die.below(40);
  const ways: (() => Stated)[] = [
    () => blank("n/a"),
    () => pitch(`${name} +${cents}c`, `${name} +${cents}c`),
    () => pitch(`${name} −${cents} cents`, `${name} -${cents}c`),
    () => pitch(`${100 + cents} Hz`, 100 + cents, { unit: "Hz" }),
    () => pitch(name.toLowerCase().replace("#", "♯"), name),
    () => unread("between two", "unreadable-pitch"),
  ];
  return (ways[die.below(ways.length)] as () => Stated)();
}

function messyWords(value: string, die: Dice, mess: number): Stated {
  if (!die.chance(mess)) return text(value);
  const ways: (() => Stated)[] = [
    () => blank(die.pick(MISSING)),
    () => text(`=${value}`, `=${value}`, "formula-like"),
    () => text(`\u200b${value}`, value, "hidden-characters"),
    () => text(`  ${value}\u00a0`, value),
    () => unread(die.pick(["〃", "idem"]), "ditto"),
  ];
  return (ways[die.below(ways.length)] as () => Stated)();
}

function messyGrade(value: number, die: Dice, mess: number): Stated {
  if (!die.chance(mess)) return grade(`${value}/5`, value, "/5");
  return die.pick([
    grade(String(value), value, "/5", "scale-assumed"),
    grade(`${value} of 5`, value, "/5"),
    blank("n/a"),
    unread("loud", "unreadable-grade"),
  ]);
}

function messyYesNo(value: string, die: Dice, mess: number): Stated {
  if (!die.chance(mess)) return text(value);
  return die.pick([text(die.pick(YES_NO.get(value) ?? []), value), blank("?"), unread("half", "unreadable-yes-no")]);
}

/** A value of a column, tidy or not. `mess`: the share of cells that are touched. */
export function messyCell(value: CleanValue, column: CleanColumn, style: Style, die: Dice, mess: number): Stated {
  if (column.kind === "quantity") return messyQuantity(Number(value), column.unit ?? "", style, die, mess);
  if (column.kind === "date") return messyDate(String(value), style, die, mess);
  if (column.kind === "pitch") return messyPitch(String(value), die, mess);
  if (column.kind === "grade") return messyGrade(Number(value), die, mess);
  return column.kind === "yes-no" ? messyYesNo(String(value), die, mess) : messyWords(String(value), die, mess);
}

// Names of months and seasons in English, Spanish, German and French, without accents, in lower case.
const NAMES = [
  "january jan enero ene januar janner janvier janv",
  "february feb febrero febr februar fevrier fevr fev",
  "march mar marzo marz maerz mrz mars",
  "april apr abril abr avril avr",
  "may mayo mai",
  "june jun junio juni juin",
  "july jul julio juli juillet juil",
  "august aug agosto ago aout",
  "september sep sept septiembre setiembre set septembre",
  "october oct octubre oktober okt octobre",
  "november nov noviembre novembre",
  "december dec diciembre dic dezember dez decembre",
];
const MONTHS = new Map(NAMES.flatMap((names, index) => names.split(" ").map((name) => [name, index + 1] as const)));
const SEASONS = new Set(
  "spring summer autumn fall winter fruhling fruhjahr sommer herbst primavera verano otono invierno printemps ete automne hiver early mid late anfang mitte ende principios mediados finales debut fin".split(
    " ",
  ),
);

/** A word without accents, in lower case. */
export const plainWord = (word: string): string =>
  word
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase();
/** The month (1 to 12) of a plain word, 0 if it is none. */
export const monthNames = (plain: string): number => MONTHS.get(plain) ?? 0;
/** Whether a plain word names a season or a part of a year. */
export const isSeason = (plain: string): boolean => SEASONS.has(plain);

// What a quantity cell says before its column has decided on the decimal mark and the unit.
import type { Atom, DecimalMark, Numeral } from "./atom.ts";
import { atomVotes, voteOf } from "./atom.ts";
import { isLikeDate } from "./date-parts.ts";
import { importUnit } from "./import-unit.ts";
import { readAtom, withPlainDigits } from "./read-atom.ts";
import { withoutMarks } from "./without-marks.ts";

export type QuantityDraft = {
  readonly form: "plain" | "uncertain" | "digits" | "range";
  readonly first: Atom;
  readonly second: Atom | null;
  /** Digits in brackets, which count in the last place of `first`. */
  readonly digits: string;
  readonly unit: string | null;
  /** The uncertainty is followed by % and nothing says yet whether that is its unit. */
  readonly percent: boolean;
  /** Codes of marks: below-limit, approximate and so on. */
  readonly marks: readonly string[];
};
/** A draft, or the code of what hinders it. */
export type DraftOrCode = QuantityDraft | { readonly form: "none"; readonly code: string };

const INCHES = new Set(['"', "″", "”", "''", "in", "in.", "inch", "inches", "′′"]);
const COMPOUNDS: readonly {
  readonly major: readonly string[];
  readonly minor: ReadonlySet<string>;
  readonly factor: number;
  readonly unit: string;
}[] = [
  { major: ["'", "′", "’", "feet", "foot", "ft.", "ft"], minor: INCHES, factor: 12, unit: "[in_i]" },
  { major: ["lbs", "lb"], minor: new Set(["oz"]), factor: 16, unit: "[oz_av]" },
  { major: ["°"], minor: new Set(["'", "′", "’"]), factor: 1, unit: "deg" },
];
const UNCERTAIN = ["±", "+/-", "+-", "give or take"];
const RANGES = ["–", "-", "…", "...", "to"];
/** "2.3* mm", "2.3? mm". */
const MARK_BEFORE_UNIT = /^ ?[?*†](?= ?[^ ?*†])/;
const LONGEST = 120;

const skipSpaces = (text: string, at: number) => {
  let next = at;
  while (/\s/.test(text[next] ?? "x")) next++;
  return next;
};

/** Feet and inches, pounds and ounces, degrees and minutes. */
function compound(text: string, first: NonNullable<ReturnType<typeof readAtom>>): QuantityDraft | null {
  const at = skipSpaces(text, first.end);
  for (const { major, minor, factor, unit } of COMPOUNDS) {
    const spelled = major.find((spelling) => text.startsWith(spelling, at));
    if (spelled === undefined || (spelled === "'" && text[at + 1] === "'")) continue;
    const second = readAtom(text, skipSpaces(text, at + spelled.length));
    if (!second || !minor.has(text.slice(second.end).trim())) continue;
    const atom: Atom =
      unit === "deg"
        ? { shape: "sum", major: second.atom, minor: first.atom, factor: 1 / 60 }
        : { shape: "sum", major: first.atom, minor: second.atom, factor };
    return { form: "plain", first: atom, second: null, digits: "", unit, percent: false, marks: [] };
  }
  return null;
}

/** Unit of a piece of text: undefined where it is none, null where nothing stands. `'` is feet, or minutes of arc under an angle. */
function unitOf(written: string, columnUnit: string | null): string | null | undefined {
  const text = written.trim();
  if (text === "") return null;
  if (text === "'" || text === "′" || text === "’") return columnUnit === "deg" || columnUnit === "'" ? "'" : "[ft_i]";
  return importUnit(text) ?? undefined;
}

/** The units of two parts as one: the one that is written; undefined where they are two different ones. */
const oneUnit = (a: string | null, b: string | null): string | null | undefined =>
  a === null ? b : b === null || a === b ? a : undefined;

const none = (code: string): DraftOrCode => ({ form: "none", code });
const looksLikeUnit = (rest: string) => /^[\p{L}°%{[][\p{L}\p{N}°%./^*·²³{}[\]_]*$/u.test(rest);
const lackOf = (rest: string) => none(looksLikeUnit(rest.trim()) ? "unknown-unit" : "unreadable-number");

/** Number, unit, separator, number, unit. */
function pair(
  first: Atom,
  rest: string,
  at: number,
  separator: string,
  form: "uncertain" | "range",
  columnUnit: string | null,
): DraftOrCode | null {
  const before = unitOf(rest.slice(0, at), columnUnit);
  if (before === undefined) return form === "range" ? null : lackOf(rest.slice(0, at));
  const tail = rest.slice(at + separator.length).trimStart();
  const second = readAtom(tail, 0);
  if (!second) return form === "range" ? null : none("unreadable-number");
  const after = unitOf(tail.slice(second.end), columnUnit);
  if (after === undefined) return lackOf(tail.slice(second.end));
  const percent = form === "uncertain" && after === "%" && before !== "%";
  const unit = percent ? before : oneUnit(before, after);
  if (unit === undefined) return none("unreadable-number");
  return { form, first, second: second.atom, digits: "", unit, percent, marks: [] };
}

/** Everything after the first number. */
function afterFirst(text: string, first: Atom, end: number, columnUnit: string | null): DraftOrCode {
  const rest = text.slice(end);
  for (const separator of UNCERTAIN) {
    const at = rest.indexOf(separator);
    if (at >= 0) return pair(first, rest, at, separator, "uncertain", columnUnit) ?? none("unreadable-number");
  }
  const digits = first.shape === "numeral" && first.exponent === 0 ? /^\((\d{1,6})\)/.exec(rest) : null;
  if (digits) {
    const unit = unitOf(rest.slice(digits[0].length), columnUnit);
    return unit === undefined
      ? lackOf(rest.slice(digits[0].length))
      : { form: "digits", first, second: null, digits: digits[1] ?? "", unit, percent: false, marks: [] };
  }
  const mark = MARK_BEFORE_UNIT.exec(rest)?.[0] ?? "";
  const unit = unitOf(rest.slice(mark.length), columnUnit);
  if (unit !== undefined)
    return {
      form: "plain",
      first,
      second: null,
      digits: "",
      unit,
      percent: false,
      marks: withoutMarks(`0${mark}`).marks,
    };
  for (const separator of RANGES) {
    const at = rest.indexOf(separator);
    const found = at >= 0 ? pair(first, rest, at, separator, "range", columnUnit) : null;
    if (found) return found;
  }
  return lackOf(rest);
}

/** "(2.31 ± 0.02) mm" with the bracket opened: the unit after it belongs to both. */
function opened(text: string): string | null {
  const close = text.indexOf(")");
  const inner = text.slice(1, close);
  return text.startsWith("(") && close > 0 && UNCERTAIN.some((separator) => inner.includes(separator))
    ? `${inner} ${text.slice(close + 1)}`
    : null;
}

function draftOfPlain(text: string, columnUnit: string | null): DraftOrCode {
  const first = readAtom(text, 0);
  if (!first) return none("unreadable-number");
  return compound(text, first) ?? afterFirst(text, first.atom, first.end, columnUnit);
}

/** Whether letters that look like digits stand in a number: the text is one with them replaced. */
function hasLetterForDigit(text: string, columnUnit: string | null): boolean {
  const digits = text.replace(/[0-9OolI.,]+/g, (token) =>
    /\d/.test(token) ? token.replace(/[Oo]/g, "0").replace(/[lI]/g, "1") : token,
  );
  return digits !== text && draftOfPlain(opened(digits) ?? digits, columnUnit).form !== "none";
}

/** Digits with one point or comma and nothing else: most cells are so, and need no scanning. */
function simpleDraft(cell: string): QuantityDraft | null {
  if (cell.length > 18 || !/^-?\d+(?:[.,]\d+)?$/.test(cell)) return null;
  const negative = cell.startsWith("-");
  const body = negative ? cell.slice(1) : cell;
  const vote = voteOf(body, false);
  if (vote === null) return null;
  return {
    form: "plain",
    first: { shape: "numeral", sign: negative ? -1 : 1, body, exponent: 0, vote },
    second: null,
    digits: "",
    unit: null,
    percent: false,
    marks: [],
  };
}

/** What a cell says as a quantity. `columnUnit`: of header or units row. */
export function quantityDraft(cell: string, columnUnit: string | null): DraftOrCode {
  const simple = simpleDraft(cell);
  if (simple) return simple;
  if (cell.length > LONGEST || !/[\p{Nd}\p{No}]/u.test(cell)) return none("unreadable-number");
  const apostrophe = /^'[\d.,+-]/.test(cell);
  const { text, marks } = withoutMarks(withPlainDigits(apostrophe ? cell.slice(1) : cell));
  const draft = draftOfPlain(opened(text) ?? text, columnUnit);
  if (isLikeDate(text) && !(draft.form === "plain" && draft.first.shape === "fraction"))
    return none("date-in-number-column");
  if (draft.form === "none") return hasLetterForDigit(text, columnUnit) ? none("letter-in-number") : draft;
  if (apostrophe && (draft.form !== "plain" || draft.unit !== null || draft.first.shape !== "numeral"))
    return none("unreadable-number");
  return { ...draft, marks: [...marks, ...draft.marks, ...(apostrophe ? ["number-as-text"] : [])] };
}

/** The one vote of a draft: a mark, "either" when it waits, null when it has none, "mixed" when it contradicts itself. */
export function draftVote(draft: QuantityDraft): DecimalMark | "either" | "mixed" | null {
  const votes: Numeral["vote"][] = [...atomVotes(draft.first), ...(draft.second ? atomVotes(draft.second) : [])];
  const point = votes.includes(".");
  const comma = votes.includes(",");
  if (point && comma) return "mixed";
  return point ? "." : comma ? "," : votes.includes("either") ? "either" : null;
}

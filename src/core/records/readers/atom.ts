// The smallest numbers in a cell: a numeral with its marks, a fraction, or feet with inches. A numeral may wait for the column's decimal mark.
export type DecimalMark = "," | ".";
/** `vote`: the decimal mark it can only have; "either" waits for the column; "none" has no mark; "certain" needs no vote. */
export type Numeral = {
  readonly sign: 1 | -1;
  readonly body: string;
  readonly exponent: number;
  readonly vote: DecimalMark | "either" | "none" | "certain";
};
export type Atom =
  | ({ readonly shape: "numeral" } & Numeral)
  | { readonly shape: "fraction"; readonly value: number; readonly allowed: boolean }
  | { readonly shape: "sum"; readonly major: Atom; readonly minor: Atom; readonly factor: number };

/** Groups of three; a 0 leads none, so that no answer of the maker makes 125 of 0,125. */
const areGroups = (groups: readonly string[]) =>
  groups.every((group, at) => (at === 0 ? /^[1-9]\d{0,2}$/.test(group) : group.length === 3));

/** The vote of digits with points and commas; null where no reading fits. `grouped`: spaces or apostrophes already group. */
export function voteOf(body: string, grouped: boolean): Numeral["vote"] | null {
  const points = body.split(".").length - 1;
  const commas = body.split(",").length - 1;
  if (points + commas === 0) return "none";
  if (points > 0 && commas > 0) {
    const decimal = body.lastIndexOf(".") > body.lastIndexOf(",") ? "." : ",";
    const [whole = "", ...rest] = body.split(decimal);
    return rest.length === 1 && !grouped && areGroups(whole.split(decimal === "." ? "," : ".")) ? decimal : null;
  }
  const mark = points > 0 ? "." : ",";
  const parts = body.split(mark);
  if (parts.length > 2) return !grouped && areGroups(parts) ? (mark === "." ? "," : ".") : null;
  const [before = "", after = ""] = parts;
  return grouped || after.length !== 3 || before.length === 0 || before.length > 3 || before.startsWith("0")
    ? mark
    : "either";
}

/** The value with that decimal mark, null where the other mark does not group by three. */
function numeralValue({ sign, body, exponent, vote }: Numeral, mark: DecimalMark): number | null {
  const decimal = vote === "certain" ? "." : mark;
  const [whole = "", fraction = "", more] = body.split(decimal);
  if (more !== undefined) return null;
  const groups = whole.split(decimal === "." ? "," : ".");
  if (fraction.includes(decimal === "." ? "," : ".") || (groups.length > 1 && !areGroups(groups))) return null;
  const value = sign * Number(`${groups.join("") || "0"}.${fraction || "0"}e${exponent}`);
  return Number.isFinite(value) ? value : null;
}

/** The number of an atom under a decimal mark; null if it has none. */
export function atomValue(atom: Atom, mark: DecimalMark): number | null {
  if (atom.shape === "numeral") return numeralValue(atom, mark);
  if (atom.shape === "fraction") return atom.allowed ? atom.value : null;
  const major = atomValue(atom.major, mark);
  const minor = atomValue(atom.minor, mark);
  if (major === null || minor === null || minor < 0) return null;
  return major < 0 ? major * atom.factor - minor : major * atom.factor + minor;
}

/** Digits after the decimal mark of a numeral. */
export const decimalsOf = (numeral: Numeral, mark: DecimalMark): number =>
  (numeral.body.split(numeral.vote === "certain" ? "." : mark)[1] ?? "").length;

/** Votes inside an atom. */
export function atomVotes(atom: Atom): Numeral["vote"][] {
  if (atom.shape === "numeral") return [atom.vote];
  return atom.shape === "fraction" ? [] : [...atomVotes(atom.major), ...atomVotes(atom.minor)];
}

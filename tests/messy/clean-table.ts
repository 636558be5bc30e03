// A clean table of invented boards, the same for the same seed: what the mess is made from.
export type CleanColumn = { readonly name: string; readonly kind: string; readonly unit: string | null };
export type CleanValue = string | number;
export type CleanTable = {
  readonly columns: readonly CleanColumn[];
  readonly rows: readonly (readonly CleanValue[])[];
};

export type Dice = {
  readonly chance: (share: number) => boolean;
  readonly below: (sides: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
  readonly next: () => number;
};

/** A small seeded source of chance (mulberry32). */
export function dice(seed: number): Dice {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return {
    next,
    chance: (share) => next() < share,
    below: (sides) => Math.floor(next() * sides),
    pick: <T>(list: readonly T[]) => list[Math.floor(next() * list.length)] as T,
  };
}

const WOODS = ["alpine spruce", "western cedar", "cypress", "maple", "Río rosewood"];
const REMARKS = [
  "rings long",
  "dull at the edge",
  "a little dry",
  "knot, lower bout",
  "clear; even",
  'said "fine"',
  "weiß und glatt",
];
const COLUMNS: readonly (readonly [name: string, kind: string, unit?: string])[] = [
  ["board", "text"],
  ["species", "text"],
  ["thickness", "quantity", "mm"],
  ["mass", "quantity", "g"],
  ["tap frequency", "quantity", "Hz"],
  ["split", "date"],
  ["tap pitch", "pitch"],
  ["balance rating", "grade"],
  ["bookmatched", "yes-no"],
  ["remarks", "text"],
];
const twoDecimals = (value: number) => Math.round(value * 100) / 100;
const twoDigits = (value: number) => String(value).padStart(2, "0");

/** Boards with an id, amounts, a date, a pitch, a grade, yes or no, and remarks. */
export function cleanTable(seed: number, rows = 24): CleanTable {
  const die = dice(seed ^ 0x5eed);
  return {
    columns: COLUMNS.map(([name, kind, unit]) => ({ name, kind, unit: unit ?? null })),
    rows: Array.from({ length: rows }, (_, at) => [
      `FZ-${String(at + 1).padStart(4, "0")}`,
      die.pick(WOODS),
      twoDecimals(2 + die.next()),
      twoDecimals(150 + 900 * die.next()),
      twoDecimals(150 + 60 * die.next()),
      `20${18 + die.below(7)}-${twoDigits(1 + die.below(12))}-${twoDigits(1 + die.below(28))}`,
      `${die.pick(["F", "F#", "G", "G#", "A", "Bb"])}2`,
      1 + die.below(5),
      die.pick(["yes", "no"]),
      die.pick(REMARKS),
    ]),
  };
}

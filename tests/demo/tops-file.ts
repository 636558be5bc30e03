// records/tops.csv: every board as it came, weighed, measured and tapped. Units in the headers, and what happens in a real book.

import { noteFromFrequency } from "../../src/core/units/index.ts";
import { barFrequency } from "../../src/core/wood/index.ts";
import { seeded } from "./seeded.ts";
import { trueEffects } from "./true-effects.ts";
import type { TrueBoard } from "./true-pieces.ts";
import { record, written } from "./written.ts";

const HEADER = [
  "Top ID",
  "Received",
  "Species",
  "Tree",
  "Supplier",
  "Mass (g)",
  "Length (mm)",
  "Width (mm)",
  "Thickness (mm)",
  "f long (Hz)",
  "f cross (Hz)",
  "Tap note",
  "Moisture (%)",
  "Remarks",
];

/** The board that splits while drying. */
export const SPLIT_TOP = "T-23";

export const topsFile = {
  name: "tops.csv",
  text(boards: readonly TrueBoard[]): string {
    const stream = seeded(trueEffects.seed, "tops file");
    const lines = [record(HEADER)];
    boards.forEach((board, index) => {
      const { balanceOffset, balanceShare, balanceScatter, calliper, calliperOffset, rule, tapFrequency } = trueEffects;
      const isSet = board.received >= trueEffects.balanceSet;
      const mass = board.density * board.length * board.width * board.thickness;
      const shown =
        mass * (isSet ? 1 : 1 + balanceShare) + (isSet ? 0 : balanceOffset) + balanceScatter * stream.normal();
      const split = board.id === SPLIT_TOP;
      const along =
        barFrequency(board.youngsModulus, board.density, board.length, board.thickness) *
        Math.exp(tapFrequency * stream.normal()) *
        (split ? 0.71 : 1);
      const across =
        barFrequency(board.acrossModulus, board.density, board.width, board.thickness) *
        Math.exp(2 * tapFrequency * stream.normal());
      const note = noteFromFrequency(along);
      const cents = Math.round(note.cents / 5) * 5;
      const fields = [
        board.id,
        board.received,
        board.species.name,
        board.tree,
        board.supplier,
        written(shown * 1e3, 1),
        written((board.length + rule * stream.normal()) * 1e3, 0),
        written((board.width + rule * stream.normal()) * 1e3, 0),
        written((board.thickness + calliperOffset + calliper * stream.normal()) * 1e3, 2),
        written(along, 1),
        written(across, 1),
        note.note + (cents === 0 ? "" : ` ${cents > 0 ? "+" : ""}${cents}c`),
        written(7.6 + 0.8 * stream.normal(), 1),
        split ? "split while drying, rings dull" : "",
      ];
      lines.push(record(untidied(fields, index)));
      // The same line copied twice when the book was typed in.
      if (board.id === "T-31") lines.push(record(untidied(fields, index)));
    });
    return `${lines.join("\n")}\n`;
  },
};

const set = (fields: string[], column: string, text: string) => {
  fields[HEADER.indexOf(column)] = text;
};
const get = (fields: readonly string[], column: string) => fields[HEADER.indexOf(column)] ?? "";

/** What a person does to a table over the years, by row. */
function untidied(plain: readonly string[], index: number): string[] {
  const fields = [...plain];
  const grams = Number(get(plain, "Mass (g)"));
  if (index === 3)
    set(
      fields,
      "Supplier",
      get(plain, "Supplier").replace(/^./, (letter) => letter.toUpperCase()),
    );
  if (index === 8) set(fields, "Mass (g)", `${(grams / 1000).toFixed(4)} kg`);
  if (index === 12) set(fields, "f long (Hz)", "");
  if (index === 12) set(fields, "Tap note", "");
  if (index === 17) set(fields, "Moisture (%)", "n/a");
  if (index === 26) set(fields, "Thickness (mm)", `${get(plain, "Thickness (mm)")}?`);
  if (index === 34) set(fields, "f cross (Hz)", `~${get(plain, "f cross (Hz)")}`);
  if (index === 41) set(fields, "Mass (g)", get(plain, "Mass (g)").replace(/\d$/, "O"));
  if (index === 47) set(fields, "Thickness (mm)", `${get(plain, "Thickness (mm)")} ± 0.05`);
  if (index === 52) set(fields, "Moisture (%)", "-");
  if (index === 58) set(fields, "Remarks", 'runout, "looks better than it rings"');
  if (index === 63) set(fields, "Moisture (%)", "not measured");
  return fields;
}

// records/instruments.csv: what became of the tops. Units in the cells of some columns, grades out of five, notes in words.
import { noteFromFrequency } from "../../src/core/units/index.ts";
import { seeded } from "./seeded.ts";
import { trueEffects } from "./true-effects.ts";
import type { TrueInstrument } from "./true-pieces.ts";
import { record, written } from "./written.ts";

const HEADER = [
  "Instrument",
  "Top ID",
  "Finished on",
  "Final thickness (mm)",
  "Scale",
  "Weight",
  "Air note",
  "Sustain (s)",
  "Loudness",
  "Tonal notes",
  "Sold",
];

export const instrumentsFile = {
  name: "instruments.csv",
  text(instruments: readonly TrueInstrument[]): string {
    const stream = seeded(trueEffects.seed, "instruments file");
    const lines = [record(HEADER)];
    instruments.forEach((instrument, index) => {
      const note = noteFromFrequency(instrument.air);
      const cents = Math.round(note.cents / 5) * 5;
      const first = stream.pick(instrument.board.species.words);
      const second = stream.pick(instrument.board.species.words);
      const fields = [
        instrument.id,
        instrument.board.id,
        instrument.finished,
        written((instrument.thickness + trueEffects.calliper * stream.normal()) * 1e3, 2),
        index % 7 === 3 ? "640 mm" : "650 mm",
        index % 4 === 1 ? `${Math.round(instrument.weight * 1000)} g` : `${written(instrument.weight, 2)} kg`,
        note.note + (cents === 0 ? "" : ` ${cents > 0 ? "+" : ""}${cents}c`),
        written(instrument.sustain + 0.04 * stream.normal(), 1 + 1),
        `${instrument.loudness}/5`,
        first === second ? first : `${first}, ${second}`,
        index < 34 ? "yes" : "no",
      ];
      if (index === 5) fields[2] = instrument.finished.slice(0, 7);
      if (index === 9) fields[8] = String(instrument.loudness);
      if (index === 14) fields[8] = "";
      if (index === 19) fields[6] = fields[6]?.replace(/^([A-G]#?)\d.*$/, "$1") ?? "";
      if (index === 22) fields[9] = "";
      if (index === 28) fields[7] = "not measured";
      lines.push(record(fields));
    });
    lines.push(
      record(["G41", "", "2026-02-11", "2.50", "650 mm", "1.36 kg", "G2 +20c", "", "4/5", "customer's own top", "yes"]),
    );
    return `${lines.join("\n")}\n`;
  },
};

import { declined, type Method, type MethodInputs, succeeded } from "../../base/index.ts";
import { pitchFromText } from "../pitch.ts";
import { concertPitchInput, concertPitchOf, temperament } from "./temperament.ts";

function run({ note, concertPitch }: MethodInputs): ReturnType<Method["run"]> {
  const tuning = concertPitchOf(concertPitch);
  if (tuning === null) return declined("out-of-domain", { name: "concertPitch", needed: "a frequency above 0" });
  const pitch = typeof note === "string" ? pitchFromText(note, tuning) : null;
  if (!pitch)
    return declined("out-of-domain", {
      name: "note",
      needed: 'a letter A to G, an accidental or none, and an octave, such as "G#2" or "Bb3 +12c"',
    });
  if (!Number.isFinite(pitch.frequency) || pitch.frequency === 0) return declined("not-finite", { name: "frequency" });
  return succeeded({ frequency: pitch.frequency, midi: pitch.midi, cents: pitch.cents, note: pitch.text });
}

/**
 * The frequency of a written note: f = A4 2^((n - 69 + cents/100)/12), n its MIDI number. The octave number changes at C, and belongs to the letter:
 * B#3 is C4, Cb4 is B3.
 */
export const noteFrequency: Method = {
  id: "note-frequency",
  name: "frequency of a written note",
  answers: "quantity",
  needs: {},
  inputs: {
    note: { kind: "text", meaning: 'letter, accidental, octave, maybe cents: "E2", "F#2", "Bb3 +12c"' },
    concertPitch: concertPitchInput,
  },
  fields: {
    frequency: { meaning: "frequency", dimension: "Hz" },
    midi: { meaning: "number of its key: 60 is middle C, 69 is A4" },
    cents: { meaning: "how far above that key it lies", dimension: "{cent}" },
    note: { meaning: "the note in its canonical spelling" },
  },
  source: temperament,
  run,
};

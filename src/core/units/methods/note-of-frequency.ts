import { declined, type Method, type MethodInputs, succeeded } from "../../base/index.ts";
import { noteFromFrequency } from "../pitch.ts";
import { concertPitchInput, concertPitchOf, temperament } from "./temperament.ts";

function run({ frequency, concertPitch }: MethodInputs): ReturnType<Method["run"]> {
  const tuning = concertPitchOf(concertPitch);
  if (tuning === null) return declined("out-of-domain", { name: "concertPitch", needed: "a frequency above 0" });
  if (typeof frequency !== "number" || !(frequency > 0) || !Number.isFinite(frequency / tuning))
    return declined("out-of-domain", { name: "frequency", needed: "a value above 0" });
  const { note, cents, midi } = noteFromFrequency(frequency, tuning);
  return Number.isFinite(cents) ? succeeded({ note, cents, midi }) : declined("not-finite", { name: "cents" });
}

/** The nearest key of equal temperament and how many cents the frequency lies above it, -50 to 50. Names use sharps. */
export const noteOfFrequency: Method = {
  id: "note-of-frequency",
  name: "nearest note of a frequency",
  answers: "quantity",
  needs: {},
  inputs: {
    frequency: { kind: "quantity", dimension: "Hz", above: 0, meaning: "frequency" },
    concertPitch: concertPitchInput,
  },
  fields: {
    note: { meaning: "nearest note" },
    cents: { meaning: "how far above it the frequency lies; below it, negative", dimension: "{cent}" },
    midi: { meaning: "number of its key: 60 is middle C, 69 is A4" },
  },
  source: temperament,
  run,
};

import { centsBetween, pitchFromText, unitFromCode } from "../../units/index.ts";
import type { FormulaFunction } from "../formula-function.ts";

const equalTemperament = { citation: "ISO 16:1975, A4 = 440 Hz; equal temperament", basis: "standard" } as const;
const frequency = unitFromCode("Hz").dimension;
const interval = unitFromCode("{cent}").dimension;

/** Functions of notes and intervals. */
export const pitchFunctions: readonly FormulaFunction[] = [
  {
    id: "cents",
    name: "how far the second frequency lies above the first, in cents",
    arguments: [
      { name: "from", takes: frequency, meaning: "the lower frequency" },
      { name: "to", takes: frequency, meaning: "the upper frequency" },
    ],
    dimension: () => interval,
    unit: "{cent}",
    evaluate: (from = Number.NaN, to = Number.NaN) => (from > 0 && to > 0 ? centsBetween(from, to) : Number.NaN),
    partials: (from = Number.NaN, to = Number.NaN) => [-1200 / (from * Math.LN2), 1200 / (to * Math.LN2)],
    source: equalTemperament,
    example: "cents(100 Hz, 200 Hz)",
  },
  {
    id: "frequency_of",
    name: "frequency of a written note",
    arguments: [{ name: "note", takes: "text", meaning: 'letter, accidental and octave: "G#2"' }],
    dimension: () => frequency,
    unit: "Hz",
    evaluate: () => Number.NaN,
    fromText: (text) => pitchFromText(text)?.frequency ?? null,
    source: equalTemperament,
    example: 'frequency_of("A2")',
  },
];

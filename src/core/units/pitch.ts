// Notes and cents in equal temperament. Octave numbers change at C: B3, then C4.
import { power } from "../base/index.ts";

/** A pitch with its canonical text: "G#2", "Ab3 +12c". Frequency in Hz. */
export type Pitch = {
  readonly frequency: number;
  readonly text: string;
  /** Number of the key, 60 for middle C, and how many cents above it the pitch lies. */
  readonly midi: number;
  readonly cents: number;
};

export const CONCERT_PITCH = 440;
const CENTS_PER_OCTAVE = 1200;
const SEMITONES = new Map([
  ["C", 0],
  ["D", 2],
  ["E", 4],
  ["F", 5],
  ["G", 7],
  ["A", 9],
  ["B", 11],
]);
const NAMES = ["C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"];
const A4 = 69;

const NOTE =
  /^([A-Ga-g])(#|♯|b|♭| sharp| flat)?(-?\d{1,2})(?: ?([+-]) ?(\d{1,3}(?:\.\d{1,3})?) ?(?:cents|cent|ct|c))?$/;

/**
 * The frequency of a written note: f = A4 * 2^((n - 69 + cents/100) / 12), n its MIDI number.
 * text: letter, maybe an accidental, octave -9 to 12, maybe signed cents; null if it is anything else. concertPitch: A4 in Hz.
 * Source: ISO 16 (A4 = 440 Hz); equal temperament.
 * @example pitchFromText("A2") -> { frequency: 110, text: "A2", midi: 45, cents: 0 }
 */
export function pitchFromText(text: string, concertPitch = CONCERT_PITCH): Pitch | null {
  const found = NOTE.exec(text.trim().replaceAll("−", "-"));
  if (!found) return null;
  const letter = (found[1] ?? "").toUpperCase();
  const accidental =
    found[2] === undefined ? "" : found[2] === "#" || found[2] === "♯" || found[2] === " sharp" ? "#" : "b";
  const shift = accidental === "#" ? 1 : accidental === "b" ? -1 : 0;
  const cents = found[5] === undefined ? 0 : Number(found[5]) * (found[4] === "-" ? -1 : 1);
  const midi = 12 * (Number(found[3]) + 1) + (SEMITONES.get(letter) ?? 0) + shift;
  const frequency = concertPitch * power(2, (midi - A4 + cents / 100) / 12);
  return {
    frequency,
    midi,
    cents,
    text: `${letter}${accidental}${found[3]}${cents === 0 ? "" : ` ${cents > 0 ? "+" : "-"}${Math.abs(cents)}c`}`,
  };
}

/** How far the second frequency lies above the first, in cents: 1200 log2(to / from). Both > 0, in any one unit. */
export const centsBetween = (from: number, to: number): number => CENTS_PER_OCTAVE * Math.log2(to / from);

/** The nearest note of a frequency and how many cents it is off. frequency: Hz, > 0. The name uses sharps. */
export function noteFromFrequency(
  frequency: number,
  concertPitch = CONCERT_PITCH,
): { readonly note: string; readonly cents: number; readonly midi: number } {
  const above = A4 + 12 * Math.log2(frequency / concertPitch);
  const midi = Math.round(above);
  return { note: `${NAMES[((midi % 12) + 12) % 12]}${Math.floor(midi / 12) - 1}`, cents: 100 * (above - midi), midi };
}

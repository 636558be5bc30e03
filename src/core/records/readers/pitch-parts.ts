// What a cell says as a pitch: letter, accidental, octave, cents; German names and H apart.
export type PitchParts = {
  /** C to B, or H as it stands. */
  readonly letter: string;
  readonly accidental: "" | "#" | "b";
  readonly octave: string;
  readonly cents: number;
  /** Written the German way (Gis, Es), which has one meaning everywhere. */
  readonly german: boolean;
  readonly approximate: boolean;
  readonly doubtful: boolean;
};

const GERMAN: readonly (readonly [string, string, "#" | "b"])[] = [
  ["cis", "C", "#"],
  ["dis", "D", "#"],
  ["eis", "E", "#"],
  ["fis", "F", "#"],
  ["gis", "G", "#"],
  ["ais", "A", "#"],
  ["ces", "C", "b"],
  ["des", "D", "b"],
  ["fes", "F", "b"],
  ["ges", "G", "b"],
  ["es", "E", "b"],
  ["as", "A", "b"],
];
const ACCIDENTALS: readonly (readonly [string, "#" | "b"])[] = [
  ["#", "#"],
  ["♯", "#"],
  ["b", "b"],
  ["♭", "b"],
  [" sharp", "#"],
  [" flat", "b"],
  ["sharp", "#"],
  ["flat", "b"],
];
const CENTS = /^([+\-−–])\s*(\d{1,4}(?:[.,]\d{1,3})?)\s*(?:cents?|ct|c)$/i;

/** The name at the start of a text: letter, accidental, and how long it is. */
function nameOf(text: string): { letter: string; accidental: "" | "#" | "b"; german: boolean; end: number } | null {
  const lower = text.slice(0, 8).toLowerCase();
  for (const [name, letter, accidental] of GERMAN)
    if (lower.startsWith(name)) return { letter, accidental, german: true, end: name.length };
  const letter = (text[0] ?? "").toUpperCase();
  if (!/^[A-H]$/.test(letter)) return null;
  const sign = ACCIDENTALS.find(([spelling]) => lower.startsWith(spelling, 1));
  return { letter, accidental: sign?.[1] ?? "", german: false, end: 1 + (sign?.[0].length ?? 0) };
}

/** A pitch begins with a letter A to H and no long word after it, unless "about" or the like stands before. */
const MAY_BE = /^(?:[A-Ha-h](?![A-Za-z]{6})|[~≈]|etwa|env|approx|aprox|about|circa)/i;

/** The parts of a pitch, null if the text is none. */
export function pitchParts(cell: string): PitchParts | null {
  if (cell.length > 32 || !MAY_BE.test(cell)) return null;
  const before = /^(?:~|≈|(?:about|approx\.?|ca\.?|c\.|circa|etwa|env\.|aprox\.)(?=\s))\s*/i.exec(cell)?.[0] ?? "";
  const doubtful = cell.endsWith("?");
  const text = cell.slice(before.length, doubtful ? -1 : undefined).trim();
  const name = nameOf(text);
  if (!name) return null;
  let rest = text.slice(name.end);
  const octave = /^ ?(\d)(?!\d)/.exec(rest);
  rest = rest.slice(octave?.[0].length ?? 0).trim();
  const cents = rest === "" ? null : CENTS.exec(rest);
  if (rest !== "" && !cents) return null;
  const size = Number((cents?.[2] ?? "0").replace(",", "."));
  return {
    letter: name.letter,
    accidental: name.accidental,
    german: name.german,
    octave: octave?.[1] ?? "",
    cents: cents && cents[1] !== "+" ? -size : size,
    approximate: before !== "",
    doubtful,
  };
}

/** "G#2", "Ab3 +12c": capital letter, # or b, no sign of zero cents. */
export const pitchText = ({ letter, accidental, octave, cents }: PitchParts): string =>
  `${letter}${accidental}${octave}${cents === 0 ? "" : ` ${cents > 0 ? "+" : "-"}${Math.abs(cents)}c`}`;

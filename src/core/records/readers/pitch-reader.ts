// Columns of pitches: note names with cents, frequencies, and the German H, which is asked about.
import type { Reading } from "../reading.ts";
import type { DecimalMark } from "./atom.ts";
import { atomValue } from "./atom.ts";
import { cellsWith } from "./cells-with.ts";
import type { ColumnCell, ColumnReader, ColumnSource } from "./column-source.ts";
import { hasWord, rowsOf } from "./column-source.ts";
import { decimalEvidence } from "./decimal-evidence.ts";
import { reading, unreadable } from "./field.ts";
import type { PitchParts } from "./pitch-parts.ts";
import { pitchParts, pitchText } from "./pitch-parts.ts";
import { draftVote } from "./quantity-draft.ts";
import { firstCode } from "./without-marks.ts";

const WORDS = new Set(["pitch", "tone", "note", "tuned", "tap", "ton", "tono", "nota"]);

const FREQUENCIES = new Set(["Hz", "kHz"]);
const isFrequency = ({ draft }: ColumnCell) =>
  draft !== null && draft.form === "plain" && FREQUENCIES.has(draft.unit ?? "");

/** The pitch in the language of the column, null where German and English names would differ and nobody has said. */
function inEnglish(parts: PitchParts, names: "english" | "german" | "ask" | "none"): PitchParts | null {
  if (parts.german) return parts;
  if (parts.letter === "H") return names === "german" ? { ...parts, letter: "B" } : null;
  if (parts.letter !== "B" || parts.accidental !== "") return parts;
  return names === "ask" ? null : names === "german" ? { ...parts, accidental: "b" } : parts;
}

function readNote(cell: ColumnCell, parts: PitchParts, names: "english" | "german" | "ask" | "none"): Reading {
  const meant = inEnglish(parts, names);
  if (meant === null) return unreadable(cell.field, "german-note-name");
  const code = parts.approximate
    ? "approximate"
    : parts.doubtful
      ? "doubtful"
      : parts.octave === ""
        ? "octave-missing"
        : undefined;
  return reading(cell.field, "pitch", pitchText(meant), null, code);
}

function readFrequency(cell: ColumnCell, decided: DecimalMark | null): Reading {
  const { field, draft } = cell;
  if (draft === null || draft.form === "none") return unreadable(field, "unreadable-pitch");
  const vote = draftVote(draft);
  const mark = decided ?? (vote === "." || vote === "," ? vote : vote === null ? "." : null);
  if (mark === null) return unreadable(field, "ambiguous-number");
  const value = atomValue(draft.first, mark);
  return value === null
    ? unreadable(field, "unreadable-pitch")
    : reading(field, "pitch", value, draft.unit, firstCode(draft.marks));
}

function read(source: ColumnSource) {
  const namesH = source.cells.some((cell) => cell.special === null && pitchParts(cell.field.text)?.letter === "H");
  const names = source.options.noteNames ?? (namesH ? "ask" : "none");
  const frequencies = { ...source, cells: source.cells.filter(isFrequency) };
  const { decided, warnings } = decimalEvidence(frequencies, []);
  const cells = cellsWith(source, (cell) => {
    const parts = pitchParts(cell.field.text);
    if (parts) return readNote(cell, parts, names);
    return isFrequency(cell) ? readFrequency(cell, decided) : unreadable(cell.field, "unreadable-pitch");
  });
  return { unit: source.unit, cells, warnings };
}

function fits(source: ColumnSource, counted: readonly ColumnCell[]): number {
  let telling = hasWord(source, WORDS);
  const notes = rowsOf(counted, (cell) => {
    const parts = pitchParts(cell.field.text);
    telling ||= parts !== null && (parts.accidental !== "" || parts.cents !== 0);
    return parts !== null;
  });
  const stored = FREQUENCIES.has(source.numerals.unit ?? "") ? source.numerals.all : 0;
  return notes > 0 && telling ? notes + stored + rowsOf(counted, isFrequency) : 0;
}

export const pitchReader: ColumnReader = { kind: "pitch", fits, read };

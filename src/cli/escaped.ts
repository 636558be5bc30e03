// Text from files on its way to a terminal: what could move the cursor or turn the direction is shown as a mark.

/** Ranges of code units that are shown as marks: controls (not tab and line end), direction and invisible characters. */
const DANGEROUS: readonly (readonly [from: number, to: number])[] = [
  [0x00, 0x08],
  [0x0b, 0x1f],
  [0x7f, 0x9f],
  [0x200b, 0x200f],
  [0x2028, 0x202e],
  [0x2060, 0x206f],
  [0xfeff, 0xfeff],
];
const isDangerous = (unit: number): boolean => DANGEROUS.some(([from, to]) => unit >= from && unit <= to);

/** Control and direction characters as \uXXXX; line ends and tabs stay. In JSON text these marks mean the characters themselves. */
export function escaped(text: string): string {
  const shown: string[] = [];
  let from = 0; // Stretches rather than letters: a report may have a hundred million.
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    if ((unit >= 0x20 && unit < 0x7f) || !isDangerous(unit)) continue;
    shown.push(text.slice(from, i), `\\u${unit.toString(16).padStart(4, "0")}`);
    from = i + 1;
  }
  return shown.length === 0 ? text : shown.join("") + text.slice(from);
}

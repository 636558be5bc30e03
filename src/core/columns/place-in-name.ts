/** Words for a place on a piece, in the trade's use. */
const PLACES = new Set(
  (
    "bass middle mid centre center treble upper lower left right top bottom head heel tail front back neck edge " +
    "north south east west inner outer near far waist bout soundhole bridge start end"
  ).split(" "),
);
/** What is counted by these is a different thing each time: the second mode is no second reading of the first. */
const OTHER_THINGS = new Set(
  "mode string fret partial harmonic overtone course column step coat day week year".split(" "),
);

export type PlaceInName = { readonly stem: string; readonly place: string; readonly numbered: boolean };

const trailingDigits = (word: string): string => {
  let start = word.length;
  while (start > 0 && word.charCodeAt(start - 1) >= 48 && word.charCodeAt(start - 1) <= 57) start--;
  return word.slice(start);
};

/**
 * A header as what is measured and where or the how-manieth time, by a trailing number of one or two digits or a word for a place; null if it has neither.
 * @example placeInName("Thickness / bass") -> { stem: "thickness", place: "bass", numbered: false }
 */
export function placeInName(header: string): PlaceInName | null {
  const words = header
    .normalize("NFC")
    .toLowerCase()
    .split(/[\s/_,.:#()[\]-]/)
    .filter((word) => word !== "");
  const last = words.pop();
  if (last === undefined) return null;
  const number = trailingDigits(last);
  if (number !== "") {
    const letters = last.slice(0, last.length - number.length);
    const stem = [...words, ...(letters === "" ? [] : [letters])];
    const known = number.length <= 2 && stem.length > 0 && !OTHER_THINGS.has(stem.at(-1) ?? "");
    return known ? { stem: stem.join(" "), place: String(Number(number)), numbered: true } : null;
  }
  return words.length > 0 && PLACES.has(last) ? { stem: words.join(" "), place: last, numbered: false } : null;
}

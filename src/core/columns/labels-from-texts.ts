/** Labels out of texts: names sorted by code unit, each row's place among them; -1 for null. */
export function labelsFromTexts(texts: readonly (string | null)[]): {
  readonly codes: Int32Array;
  readonly names: readonly string[];
} {
  const places = new Map<string, number>();
  const firsts = new Int32Array(texts.length).fill(-1);
  for (let row = 0; row < texts.length; row++) {
    const text = texts[row] ?? null;
    if (text === null) continue;
    const place = places.get(text) ?? places.size;
    if (place === places.size) places.set(text, place);
    firsts[row] = place;
  }
  const given = [...places.keys()];
  const names = [...given].sort();
  // From the order in which names first appear to the sorted one; each name is looked up once, not each row.
  const sorted = new Int32Array(given.length);
  for (let code = 0; code < names.length; code++) sorted[places.get(names[code] as string) as number] = code;
  return { codes: firsts.map((first) => (first < 0 ? -1 : (sorted[first] as number))), names };
}

/** Labels out of texts: names sorted by code unit, each row's place among them; -1 for null. */
export function labelsFromTexts(texts: readonly (string | null)[]): {
  readonly codes: Int32Array;
  readonly names: readonly string[];
} {
  const names = [...new Set(texts.filter((text) => text !== null))].sort();
  const place = new Map(names.map((name, index) => [name, index]));
  return { codes: Int32Array.from(texts, (text) => (text === null ? -1 : (place.get(text) ?? -1))), names };
}

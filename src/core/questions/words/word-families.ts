const NEGATIONS = new Set(["not", "no", "non", "nicht", "kein", "sin", "pas", "without", "less", "hardly", "never"]);

const tokens = (text: string): readonly string[] =>
  text
    .normalize("NFC")
    .toLowerCase()
    .split(/[^\p{L}\p{M}\p{N}]+/u)
    .filter((token) => token !== "");

/** Whether a note says one of the words: whole words, any case, in the order of the phrase; "not bright" does not say bright. */
export function saysWord(text: string, words: readonly string[]): boolean {
  const note = tokens(text);
  return words.some((word) => {
    const phrase = tokens(word);
    return (
      phrase.length > 0 &&
      note.some((_, at) => phrase.every((part, k) => note[at + k] === part) && !NEGATIONS.has(note[at - 1] ?? ""))
    );
  });
}

const LEAST_LETTERS = 4;
const MOST = 8;

/** The families to count: the lexicon's; without one, the most frequent words of four letters or more, each a family of itself. */
export function wordFamilies(
  lexicon: ReadonlyMap<string, readonly string[]>,
  texts: readonly string[],
): ReadonlyMap<string, readonly string[]> {
  if (lexicon.size > 0) return lexicon;
  const counts = new Map<string, number>();
  for (const text of texts)
    for (const token of new Set(tokens(text)))
      if (token.length >= LEAST_LETTERS) counts.set(token, (counts.get(token) ?? 0) + 1);
  const often = [...counts].filter(([, count]) => count > 1).sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return new Map(often.slice(0, MOST).map(([word]) => [word, [word]]));
}

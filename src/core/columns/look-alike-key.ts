const UNSEEN = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/gu;
const HYPHENS = /[\u2010-\u2015\u2212\ufe58\ufe63\uff0d]/gu;
const TWINS = new Map(
  [..."АВЕКМНОРСТУХасеорухіΑΒΕΖΗΙΚΜΝΟΡΤΥΧο"].map((letter, index) => [
    letter,
    "ABEKMHOPCTYXaceopyxiABEZHIKMNOPTYXo"[index] ?? letter,
  ]),
);

/** A key under which texts that look the same are the same: unseen marks dropped, hyphens alike, letters of other scripts as their Latin twins. */
export function lookAlikeKey(text: string): string {
  const plain = text.normalize("NFKC").replace(UNSEEN, "").replace(HYPHENS, "-").trim();
  return [...plain].map((letter) => TWINS.get(letter) ?? letter).join("");
}

const UNSEEN = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/gu;
const HYPHENS = /[\u2010-\u2015\u2212\ufe58\ufe63\uff0d]/gu;
const TWINS = new Map(
  [..."АВЕКМНОРСТУХасеорухіΑΒΕΖΗΙΚΜΝΟΡΤΥΧο"].map((letter, index) => [
    letter,
    "ABEKMHOPCTYXaceopyxiABEZHIKMNOPTYXo"[index] ?? letter,
  ]),
);

const SEPARATORS = /[\s._-]+/gu;
/** Zeros that lead a run of digits: "007" is alike to "7", "T-007" to "T-7"; a lone 0 stays. */
const LEADING_ZEROS = /(?<![\d])0+(?=\d)/gu;

const PLAIN = /^[ -~]*$/;

const unlikeLetters = (text: string): string =>
  [...text.normalize("NFKC").replace(UNSEEN, "").replace(HYPHENS, "-").trim()]
    .map((letter) => TWINS.get(letter) ?? letter)
    .join("");

/**
 * A key under which texts that look the same, or that a person takes for the same id, are the same: unseen marks dropped, letters of other scripts as their
 * Latin twins, case, leading zeros and the kind of separator disregarded. Only for pointing out, never for matching.
 */
export function lookAlikeKey(text: string): string {
  const plain = PLAIN.test(text) ? text.trim() : unlikeLetters(text);
  return plain.toLowerCase().replace(SEPARATORS, "-").replace(LEADING_ZEROS, "");
}

/** Why a record takes no part in an answer: code -> words. A row that the maker left out carries the maker's own reason instead of a code. */
export const setAsideReasons: ReadonlyMap<string, string> = new Map([
  ["missing-value", "a value that the question needs is missing"],
  ["where", "the question's condition leaves it out"],
  ["not-positive", "a value is zero or below, and its logarithm is needed"],
  ["group-of-one", "its group has no other record to judge its spread by"],
  ["repeated-row", "the same row stands in the table twice"],
]);

/** The reason in words; a reason that is no code is the maker's own sentence. */
export const setAsideInWords = (why: string): string => setAsideReasons.get(why) ?? why;

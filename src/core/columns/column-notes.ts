// Remarks on how columns came about. Code and facts are the truth; the sentence is made here and nowhere else.
type Facts = {
  "name-repeats": { header: string; name: string };
  "unmatched-left": { count: number; left: string; right: string; keys: string };
  "unmatched-right": { count: number; left: string; right: string; keys: string };
  "matched-several": { count: number; left: string; right: string; keys: string };
  "look-alike": { left: string; right: string };
  "other-dimension": { column: string; count: number };
  "other-scale": { column: string; count: number };
};

export const columnNotes: { readonly [C in keyof Facts]: (facts: Facts[C]) => string } = {
  "name-repeats": ({ header, name }) => `There is a second column called ${header}; it is ${name} here.`,
  "unmatched-left": ({ count, left, right, keys }) =>
    `${count} records of ${left} have no match in ${right} and stay without its columns: ${keys}.`,
  "unmatched-right": ({ count, left, right, keys }) =>
    `${count} records of ${right} have no match in ${left} and are not in this table: ${keys}.`,
  "matched-several": ({ count, left, right, keys }) =>
    `${count} records of ${left} match several of ${right} and stand here once for each match: ${keys}.`,
  "look-alike": ({ left, right }) =>
    `${left} and ${right} look alike but are written with different characters, so they were not joined.`,
  "other-dimension": ({ column, count }) =>
    `${count} cells of ${column} have a unit of another kind than the column and count as missing.`,
  "other-scale": ({ column, count }) =>
    `${count} cells of ${column} are graded on another scale than the column and count as missing.`,
};

/** The first names of a list, and how many more there are. */
export const someNames = (names: readonly string[]): string =>
  names.length <= 5 ? names.join(", ") : `${names.slice(0, 5).join(", ")} and ${names.length - 5} more`;

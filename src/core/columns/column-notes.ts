// Remarks on how columns came about. Code and facts are the truth; the sentence is made here and nowhere else.
type Facts = {
  "name-repeats": { header: string; name: string };
  "unmatched-left": { count: number; left: string; right: string; keys: string };
  "unmatched-right": { count: number; left: string; right: string; keys: string };
  "matched-several": { count: number; left: string; right: string; keys: string };
  "several-to-several": { left: string; right: string; on: string; rows: number; keys: string };
  "rows-share": { on: string };
  "look-alike": { left: string; right: string };
  "more-look-alike": { count: number };
  "other-dimension": { column: string; count: number };
  "other-scale": { column: string; count: number };
  "far-from-usual": { column: string; piece: string; value: string; more: number; low: string; high: string };
  "readings-unusable": { name: string; columns: string };
  "readings-missing": { name: string; count: number; most: number };
  "piece-unknown": { column: string };
  "one-row-per": { readings: number; pieces: number; file: string };
  "equal-readings": { count: number };
  "readings-set-aside": { count: number };
  "readings-disagree": { column: string; count: number; pieces: string };
};

const counted = (count: number, file: string): string =>
  count === 1 ? `One record of ${file} has` : `${count} records of ${file} have`;

export const columnNotes: { readonly [C in keyof Facts]: (facts: Facts[C]) => string } = {
  "name-repeats": ({ header, name }) => `There is a second column called ${header}; it is ${name} here.`,
  "unmatched-left": ({ count, left, right, keys }) =>
    `${counted(count, left)} no match in ${right} and ${count === 1 ? "stays" : "stay"} without its columns: ${keys}.`,
  "unmatched-right": ({ count, left, right, keys }) =>
    `${counted(count, right)} no match in ${left} and ${count === 1 ? "is" : "are"} not in this table: ${keys}.`,
  "matched-several": ({ count, left, right, keys }) =>
    `${count} ${count === 1 ? "record" : "records"} of ${left} ${count === 1 ? "matches" : "match"} several of ${right} and ${count === 1 ? "stands" : "stand"} here once for each match: ${keys}.`,
  "several-to-several": ({ left, right, on, rows, keys }) =>
    `Several records of ${left} and several of ${right} have the same ${on}, so each is set against each, which makes ${rows} rows: ${keys}. Give them ids of their own, or set the extra records aside.`,
  "rows-share": ({ on }) =>
    `Rows with the same ${on} are not separate evidence: answers count them together, as if "pieces share ${on}" were written.`,
  "look-alike": ({ left, right }) =>
    `${left} and ${right} look alike but are not written alike, so they were not joined. If they are one piece, write them the same way in both tables.`,
  "more-look-alike": ({ count }) =>
    `${count} more ${count === 1 ? "id looks" : "ids look"} like one of the other table.`,
  "other-dimension": ({ column, count }) =>
    `${count} ${count === 1 ? "cell" : "cells"} of ${column} ${count === 1 ? "has" : "have"} a unit of another kind than the column and ${count === 1 ? "counts" : "count"} as missing.`,
  "other-scale": ({ column, count }) =>
    `${count} ${count === 1 ? "cell" : "cells"} of ${column} ${count === 1 ? "is" : "are"} graded on another scale than the column and ${count === 1 ? "counts" : "count"} as missing.`,
  "far-from-usual": ({ column, piece, value, more, low, high }) =>
    `${column} of ${piece} is ${value}${more === 0 ? "" : `, and ${more} more ${more === 1 ? "is" : "are"} as far off`}; usual is ${low} to ${high}. Is the unit right?`,
  "readings-unusable": ({ name, columns }) =>
    `${name} cannot be the mean of ${columns}: it takes at least two columns of this table with quantities of one kind.`,
  "readings-missing": ({ name, count, most }) =>
    `${count} ${count === 1 ? "record has" : "records have"} fewer than ${most} readings of ${name}; the mean is that of the readings there are.`,
  "piece-unknown": ({ column }) =>
    `The description says one row per ${column}, but there is no such column; every row stays.`,
  "one-row-per": ({ readings, pieces, file }) =>
    `${readings} rows of ${file} are readings of ${pieces} ${pieces === 1 ? "piece" : "pieces"}; each piece is one row here, its quantities the mean with the standard error.`,
  "equal-readings": ({ count }) =>
    `${count} ${count === 1 ? "row equals an earlier one and counts as a reading" : "rows equal an earlier one and count as readings"}.`,
  "readings-set-aside": ({ count }) =>
    `${count} ${count === 1 ? "row is set aside and does not count as a reading" : "rows are set aside and do not count as readings"}.`,
  "readings-disagree": ({ column, count, pieces }) =>
    `${column} is not the same in all rows of ${count} ${count === 1 ? "piece" : "pieces"} and counts as missing there: ${pieces}.`,
};

/** The first names of a list, and how many more there are. */
export const someNames = (names: readonly string[]): string =>
  names.length <= 5 ? names.join(", ") : `${names.slice(0, 5).join(", ")} and ${names.length - 5} more`;

// What can be wrong with sharing or with a copy, and what it would take. Code and facts are the truth; the sentence is made here and nowhere else.

type Facts = {
  "unknown-column": { column: string };
  "column-in-use": { column: string; use: string };
  "can-be-solved-for": { column: string; from: string; way: string };
  "prose-mentions": { column: string; line: number };
  "bad-date": { date: string };
  "too-large": { limit: number; found: number };
  "not-a-copy": Record<never, never>;
  changed: Record<never, never>;
  "bad-content": { where: string };
  "other-version": { made: string; here: string };
  different: { entry: string; what: string; stated: string; recomputed: string };
  "differs-from-rebuilt": { line: number };
  "cannot-recompute": { reason: string };
};

export type CopyProblemCode = keyof Facts;
export type CopyProblem = {
  readonly code: CopyProblemCode;
  readonly facts: Readonly<Record<string, string | number>>;
  readonly sentence: string;
};

export const copyProblems: { readonly [C in CopyProblemCode]: (facts: Facts[C]) => string } = {
  "unknown-column": ({ column }) =>
    `There is no column ${column} to hold back. Check the spelling against the column heads.`,
  "column-in-use": ({ column, use }) => `${column} cannot be held back, because ${use}. Change that first.`,
  "can-be-solved-for": ({ column, from, way }) =>
    `${column} could be worked out from ${from}: ${way}. Hold that back too.`,
  "prose-mentions": ({ column, line }) =>
    `The text at line ${line} mentions ${column}, or a value of it. Read it before you share.`,
  "bad-date": ({ date }) => `${date} is not a date. Write it as year-month-day.`,
  "too-large": ({ limit, found }) => `A dated copy may have ${limit} bytes at most, and this has ${found}.`,
  "not-a-copy": () => "This file is not a dated copy, or its head is damaged.",
  changed: () => "The file has been changed since it was made: its digest does not fit its bytes.",
  "bad-content": ({ where }) => `The data inside are not as a dated copy has them, at ${where}.`,
  "other-version": ({ made, here }) =>
    `The copy was made by version ${made}, and this is ${here}: only the numbers were compared.`,
  different: ({ entry, what, stated, recomputed }) =>
    `${entry}: ${what} is ${stated} in the copy and ${recomputed} when computed again from its records.`,
  "differs-from-rebuilt": ({ line }) =>
    `What the copy shows differs from what its own data give, first at line ${line}.`,
  "cannot-recompute": ({ reason }) => `The numbers could not be computed again: ${reason}.`,
};

/** A problem with its sentence. */
export const copyProblem = <C extends CopyProblemCode>(code: C, facts: Facts[C]): CopyProblem => ({
  code,
  facts,
  sentence: copyProblems[code](facts),
});

/** What verifying does not show; it stands in every verification. */
export const notShown: readonly string[] = [
  "who made the copy",
  "that the records in it are true",
  "that no other copy with other records was made",
];

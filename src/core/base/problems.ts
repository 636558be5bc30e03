// What can be wrong in the maker's text or table, at a place. Code and facts are the truth; the sentence is made here and nowhere else.

/** Facts by code: add a line here and its sentence below. */
type Facts = {
  "unknown-column": { name: string; table: string };
  "unknown-name": { name: string };
  "unknown-unit": { unit: string };
  "unknown-function": { name: string };
  "unknown-method": { name: string };
  "unknown-entry-kind": { name: string };
  "unknown-table": { name: string };
  "several-tables": { tables: string };
  "wrong-dimension": { left: string; right: string; doing: string };
  "wrong-kind": { found: string; needed: string };
  "wrong-argument-count": { name: string; have: number; need: string };
  ring: { ring: string };
  syntax: { found: string; expected: string };
  "name-taken": { name: string };
  "missing-file": { file: string };
  "not-a-table": { file: string };
  "empty-file": { file: string };
  "description-not-understood": { file: string; place: string; reason: string };
  "edits-unplaced": { file: string; count: number };
  "front-matter": { reason: string };
  "unclosed-fence": { name: string };
  limit: { what: string; limit: string; found: string };
  "waits-for": { name: string };
  defect: { id: string };
};

export type ProblemCode = keyof Facts;

/** A problem with its place: `line` and `column` from 1 within the file, `length` in characters. */
export type Problem = {
  readonly file?: string;
  readonly line: number;
  readonly column: number;
  readonly length: number;
  readonly code: ProblemCode;
  readonly sentence: string;
  readonly suggestion?: string;
};

/** The sentence of each code: what is so, what to do. */
export const problems: { readonly [C in ProblemCode]: (facts: Facts[C]) => string } = {
  "unknown-column": ({ name, table }) =>
    `There is no column ${name} in ${table}. Check the spelling against the column heads.`,
  "unknown-name": ({ name }) =>
    `Nothing here is called ${name}. Check the spelling, or write the entry it should come from.`,
  "unknown-unit": ({ unit }) =>
    `The unit ${unit} is not known. Write it as in the list of units, for example mm, kg/m3 or GPa.`,
  "unknown-function": ({ name }) => `There is no function ${name}. The words page lists them all.`,
  "unknown-method": ({ name }) =>
    `There is no method ${name} for this question. Leave out "by", or choose one from the list of methods.`,
  "unknown-entry-kind": ({ name }) => `${name} is not a kind of entry.`,
  "unknown-table": ({ name }) => `There is no record table ${name} in this notebook. Add a records entry for it.`,
  "several-tables": ({ tables }) =>
    `These columns stand in more than one table (${tables}). Say which with "of" and its name.`,
  "wrong-dimension": ({ left, right, doing }) =>
    `${doing} needs two amounts of one kind, and these are ${left} and ${right}.`,
  "wrong-kind": ({ found, needed }) => `This is ${found}, and ${needed} is needed here.`,
  "wrong-argument-count": ({ name, have, need }) => `${name} takes ${need}, and has ${have} here.`,
  ring: ({ ring }) => `These need each other in a ring: ${ring}. Break it at one of them.`,
  syntax: ({ found, expected }) =>
    found === "The end"
      ? `This stops too soon; ${expected} was expected.`
      : `${found} is not understood here; ${expected} was expected.`,
  "name-taken": ({ name }) => `${name} is already the name of something above. Choose another name.`,
  "missing-file": ({ file }) => `The file ${file} is not in this folder. Put it there, or correct its name.`,
  "not-a-table": ({ file }) => `${file} cannot be read as a table. Save it as CSV or tab-separated text.`,
  "empty-file": ({ file }) => `${file} is empty. Put a heading and at least one record in it.`,
  "description-not-understood": ({ file, place, reason }) =>
    `The description ${file} is not understood${place === "" ? "" : ` at ${place}`}: ${reason}. The table is read without it.`,
  "edits-unplaced": ({ file, count }) =>
    `${count === 1 ? "An edit of the records" : `${count} edits of the records`} in ${file} could not be applied and ${count === 1 ? "is" : "are"} kept aside. Open the table to see why.`,
  "front-matter": ({ reason }) => `The lines between the dashes at the top are not understood: ${reason}.`,
  "unclosed-fence": ({ name }) =>
    `The entry ${name} is never closed. Put three backquotes on a line of their own beneath it.`,
  limit: ({ what, limit, found }) => `${what} may be ${limit} at most, and this is ${found}.`,
  "waits-for": ({ name }) => `This waits for ${name}, which has a problem of its own.`,
  defect: ({ id }) => `This is a fault of ours, not of your records (${id}). Everything else still answers.`,
};

/** A problem at a place, with its sentence. */
export function problem<C extends ProblemCode>(
  code: C,
  facts: Facts[C],
  place: { readonly line: number; readonly column: number; readonly length: number; readonly file?: string },
  suggestion?: string,
): Problem {
  return { ...place, code, sentence: problems[code](facts), ...(suggestion === undefined ? {} : { suggestion }) };
}

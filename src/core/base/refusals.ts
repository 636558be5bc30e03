// Why an answer is declined, and what it would take. Code and facts are the truth; the sentence is made here and nowhere else.

type Facts = {
  "too-few-records": { have: number; need: number };
  "no-spread": { column: string };
  "one-group": { column: string; group: string };
  "no-records": { table: string };
  collinear: { column: string };
  "not-finite": { name: string };
  "unit-missing": { column: string };
  "not-positive": { column: string };
  "wrong-kind": { column: string; found: string; needed: string };
  "wrong-dimension": { name: string; found: string; needed: string };
  "out-of-domain": { name: string; needed: string };
  "perfect-fit": { column: string };
  "description-not-understood": { place: string; reason: string };
};

export type RefusalCode = keyof Facts;
export type Refusal = { [C in RefusalCode]: { readonly code: C; readonly facts: Facts[C] } }[RefusalCode];

export const refusals: { readonly [C in RefusalCode]: (facts: Facts[C]) => string } = {
  "too-few-records": ({ have, need }) => `Only ${have} usable records; at least ${need} are needed.`,
  "no-spread": ({ column }) =>
    `Every record has the same ${column}, so nothing can be read off against it. Records that differ in it are needed.`,
  "one-group": ({ column, group }) =>
    `All records have the same ${column} (${group}); at least two are needed to compare.`,
  "no-records": ({ table }) => `No record of ${table} is left to answer with.`,
  collinear: ({ column }) => `${column} says the same as the other columns of the question. Leave it out.`,
  "not-finite": ({ name }) => `${name} cannot be computed from these records.`,
  "unit-missing": ({ column }) =>
    `${column} has no unit, so it cannot be used with amounts that have one. Give the unit in its head or in its description.`,
  "not-positive": ({ column }) => `${column} has values of zero or below, and this needs values above zero.`,
  "wrong-kind": ({ column, found, needed }) => `${column} is ${found}; this needs ${needed}.`,
  "wrong-dimension": ({ name, found, needed }) => `${name} is in ${found}; this needs ${needed}.`,
  "out-of-domain": ({ name, needed }) => `${name} is outside what this can be used for; it needs ${needed}.`,
  "perfect-fit": ({ column }) =>
    `${column} is given exactly by the others, so there is no scatter to judge by. Check that it was measured and not computed.`,
  "description-not-understood": ({ place, reason }) =>
    `The description of the table is not understood${place === "" ? "" : ` at ${place}`}: ${reason}. Correct it, or take the file away.`,
};

// Why an answer is declined, and what it would take. Code and facts are the truth; the sentence is made here and nowhere else.

type Facts = {
  "too-few-records": { have: number; need: number };
  "too-few-groups": { column: string; have: number; need: number };
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
  "most-on-one-plane": { count: number; of: number };
  "slope-may-be-zero": { name: string };
  "not-converged": { name: string };
  "input-missing": { name: string; meaning: string };
  "input-unknown": { name: string; nearest: string; known: string };
  "unit-unknown": { name: string; unit: string };
  "unit-left-out": { name: string; text: string; needed: string };
  "units-differ": { name: string; one: string; other: string };
  "amount-unreadable": { name: string; text: string };
  "amount-ambiguous": { name: string; text: string; one: string; other: string };
  "too-large": { name: string; most: string };
  "model-not-understood": { reason: string };
  "negative-uncertainty": { name: string };
  "contradicting-correlations": Record<never, never>;
  "axes-swapped": { along: string; across: string };
  "poisson-too-large": { poisson: string };
  "modes-too-close": { along: string; across: string };
  "description-not-understood": { place: string; reason: string };
};

export type RefusalCode = keyof Facts;
export type Refusal = { [C in RefusalCode]: { readonly code: C; readonly facts: Facts[C] } }[RefusalCode];

export const refusals: { readonly [C in RefusalCode]: (facts: Facts[C]) => string } = {
  "too-few-records": ({ have, need }) => `Only ${have} usable records; at least ${need} are needed.`,
  "too-few-groups": ({ column, have, need }) =>
    `The usable records have ${have} different ${column}; at least ${need} are needed.`,
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
  "most-on-one-plane": ({ count, of }) =>
    `${count} of ${of} records lie exactly on one line, so the others have no scatter to be judged by. Look at whether those were measured, and not computed or copied; readings with more digits are needed.`,
  "not-converged": ({ name }) =>
    `No best value of ${name} is found for these records. More records, or fewer columns, are needed.`,
  "slope-may-be-zero": ({ name }) =>
    `The slope of the line may be zero, so any ${name} could have given this reading. Readings further apart, or more of them, are needed.`,
  "input-missing": ({ name, meaning }) => `${name} is missing (${meaning}). Give it among the inputs.`,
  "input-unknown": ({ name, nearest, known }) =>
    `There is no input ${name} here. ${nearest === "" ? `It takes ${known}.` : `${nearest} may be meant.`}`,
  "unit-unknown": ({ name, unit }) =>
    `${name} has the unit "${unit}", which is not known. Write it as mm, in, kg/m3, GPa or the like.`,
  "unit-left-out": ({ name, text, needed }) =>
    `${name} ("${text}") has no unit. Give one of ${needed}, beside the number or in its text.`,
  "units-differ": ({ name, one, other }) => `${name} says ${one} in its text and ${other} beside it. Give one unit.`,
  "amount-unreadable": ({ name, text }) =>
    `${name} ("${text}") cannot be read as a number. Write it as 2.4, 2,4, 3/32, 7 1/2 or 1.6e6; a fraction's lower number is 2, 4, 8, 16, 32, 64 or 128.`,
  "amount-ambiguous": ({ name, text, one, other }) =>
    `${name} ("${text}") can be ${one} or ${other}, for three digits stand after its mark. Say which mark is the decimal one, or write it the other way.`,
  "too-large": ({ name, most }) => `${name} is larger than can be used here. It may be at most ${most}.`,
  "model-not-understood": ({ reason }) =>
    `The model is not understood: ${reason}. Write it as in density = mass / (length * width * thickness).`,
  "negative-uncertainty": ({ name }) =>
    `The uncertainty of ${name} is negative; a standard uncertainty cannot be negative, it is zero or more.`,
  "contradicting-correlations": () =>
    "These correlations contradict one another: no inputs can have all of them. Give coefficients from -1 to 1 that fit together.",
  "axes-swapped": ({ along, across }) =>
    `With ${along} and ${across} the wood would be stiffer across the grain than along it. Look whether length and width, or the two frequencies, are swapped.`,
  "poisson-too-large": ({ poisson }) =>
    `A Poisson ratio nu_LR of ${poisson} cannot be: its square must be below E_L/E_R, the ratio of the moduli along and across.`,
  "modes-too-close": ({ along, across }) =>
    `No plate of this outline has ${along} and ${across} as its first bending along and across: near this outline the two mix into a ring and a cross and keep apart. Look at the names of the two peaks, or cut strips.`,
  "description-not-understood": ({ place, reason }) =>
    `The description of the table is not understood${place === "" ? "" : ` at ${place}`}: ${reason}. Correct it, or take the file away.`,
};

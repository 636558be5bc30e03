// What a formula may call: one catalogue for the checker, completion and the words page.
import type { FormulaFunction } from "./formula-function.ts";
import { arithmeticFunctions } from "./functions/arithmetic-functions.ts";
import { groupFunctions } from "./functions/group-functions.ts";
import { pitchFunctions } from "./functions/pitch-functions.ts";
import { readingFunctions } from "./functions/reading-functions.ts";
import { woodFunctions } from "./functions/wood-functions.ts";
import type { GroupFunction } from "./group-function.ts";

/** In the order in which they are shown. */
export const functionCatalogue: readonly FormulaFunction[] = [
  ...arithmeticFunctions,
  ...readingFunctions,
  ...woodFunctions,
  ...pitchFunctions,
];

export const functionsByName: ReadonlyMap<string, FormulaFunction> = new Map(
  functionCatalogue.map((each) => [each.id, each]),
);
export const groupFunctionsByName: ReadonlyMap<string, GroupFunction> = new Map(
  groupFunctions.map((each) => [each.id, each]),
);

// Which methods a question of each sort may name after `by`; the first that fits is also what is used where none is named.
import { comparisonMethods } from "./comparison/comparison-methods.ts";
import { groupDifferenceMethods } from "./comparison/group-differences.ts";
import { kruskalWallis } from "./methods/kruskal-wallis.ts";
import { LINE_METHODS, relationMethods } from "./relation/relation-methods.ts";

/** By what a question asks: the ids that may stand after `by`. A sort without a choice has none. */
export const namedMethods = {
  relation: [...LINE_METHODS, ...relationMethods.keys()],
  comparison: [...groupDifferenceMethods, kruskalWallis.id, ...comparisonMethods.keys()],
  agreement: ["bland-altman", "weighted-kappa"],
  words: [],
  word: ["welch-t"],
  prediction: ["ols"],
  ranking: [],
} as const satisfies Readonly<Record<string, readonly string[]>>;

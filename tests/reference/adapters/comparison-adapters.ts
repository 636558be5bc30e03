// Two groups and resampling: what is said in words in a case's options, as the method's choices.
import { columnsOf, type StatsCase } from "../stats-case.ts";
import { plainInputs, type StatsAdapters } from "./stats-adapter.ts";

/** The words in which a case names a figure -> the method's name of it. */
const permuted: readonly (readonly [RegExp, string])[] = [
  [/slope/i, "slope"],
  [/spearman|rank/i, "spearman"],
  [/pearson|correlation/i, "pearson"],
  [/mean\(?a\)?\s*-\s*mean/i, "difference-of-means"],
];
const resampled: readonly (readonly [RegExp, string])[] = [
  [/slope/i, "slope"],
  [/correlation|pearson/i, "correlation"],
  [/trimmed/i, "trimmed-mean"],
  [/median/i, "median"],
  [/standard deviation|\bsd\b/i, "sd"],
  [/mean/i, "mean"],
];
const named = (one: StatsCase, names: readonly (readonly [RegExp, string])[]) =>
  names.find(([words]) => words.test(String(one.options["statistic"])))?.[1];

export const comparisonAdapters: StatsAdapters = {
  permutation: {
    inputs: (one) => {
      const isPaired = /paired|sign/i.test(String(one.options["statistic"]));
      return {
        ...plainInputs(one),
        ...columnsOf(one),
        statistic: named(one, permuted) ?? "difference-of-means",
        ...(isPaired ? { paired: true } : {}),
        mode: /exact/i.test(String(one.options["mode"] ?? "exact")) ? "exact" : "drawn",
      };
    },
  },
  bootstrap: {
    inputs: (one) => ({
      ...plainInputs(one),
      ...columnsOf(one),
      statistic: named(one, resampled),
      mode: /every|exact/i.test(String(one.options["mode"] ?? "every")) ? "exact" : "drawn",
    }),
  },
};

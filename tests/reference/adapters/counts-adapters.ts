// Counts, grades and power: a paired table by its cells, graders as one list each, sides of a test as they are called here.
import { columnsOf, type Inputs, type StatsCase } from "../stats-case.ts";
import { plainInputs, type StatsAdapter, type StatsAdapters, twoColumns } from "./stats-adapter.ts";

/** `two.sided`, `two_sided`, `one.sided` … with a hyphen; a null value under the name of the method's input. */
function namedInputs(one: StatsCase, renamed: Readonly<Record<string, string>> = {}): Inputs {
  const given = Object.entries(plainInputs(one)).map(([name, value]) => [renamed[name] ?? name, value] as const);
  const inputs = Object.fromEntries(given);
  const hyphened = (name: string) =>
    typeof inputs[name] === "string" ? { [name]: inputs[name].replaceAll(/[._ ]/g, "-") } : {};
  return { ...inputs, ...hyphened("alternative"), ...hyphened("design") };
}
const named = (renamed?: Readonly<Record<string, string>>): StatsAdapter => ({
  inputs: (one) => namedInputs(one, renamed),
});

/** The columns of the graders, `rater_…`, in their order; a column beside them names the pieces. A code for a missing grade is none. */
function gradersOf(one: StatsCase): readonly (readonly unknown[])[] {
  const columns = Object.entries(columnsOf(one)).filter(
    (column): column is [string, unknown[]] =>
      Array.isArray(column[1]) && column[1].every((each) => !Array.isArray(each)),
  );
  const raters = columns.filter(([name]) => /^(rater|grader|observer|coder|judge)/i.test(name));
  const missing = String(one.options.missing ?? "null");
  return (raters.length > 1 ? raters : columns).map(([, list]) =>
    list.map((each) => (String(each) === missing ? null : each)),
  );
}

export const countsAdapters: StatsAdapters = {
  "binomial-test": named({ p0: "base_rate", p: "base_rate", null_value: "base_rate" }),
  "fisher-exact": named({ or: "null_odds_ratio", odds_ratio: "null_odds_ratio", null_value: "null_odds_ratio" }),
  "power-correlation": named(),
  "power-proportion": named(),
  "power-t": named({ type: "design" }),
  "power-slope": named(),
  mcnemar: {
    inputs: (one) => {
      const { table, ...rest } = plainInputs(one);
      if (!Array.isArray(table)) return { ...rest, ...(table as object) };
      const isFourfold = table.length === 2 && table.every((row) => Array.isArray(row) && row.length === 2);
      if (!isFourfold) return rest;
      const [[both, onlyA], [onlyB, neither]] = table as [[number, number], [number, number]];
      return { ...rest, both, only_a: onlyA, only_b: onlyB, neither };
    },
  },
  concordance: twoColumns,
  "weighted-kappa": {
    inputs: (one) => {
      const [first, second] = gradersOf(one);
      return { ...plainInputs(one), rater_a: first, rater_b: second };
    },
  },
  "krippendorff-alpha": {
    inputs: (one) => ({
      ratings: gradersOf(one),
      ...(one.options.levels === undefined ? {} : { levels: one.options.levels }),
    }),
  },
};

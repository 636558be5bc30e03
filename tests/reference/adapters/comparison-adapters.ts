// Two groups and resampling: columns by the names that the options give them, and what is said in words as the method's choices.
import { columnsOf, type Inputs, modelOf, type StatsCase } from "../stats-case.ts";
import type { StatsAdapter, StatsAdapters } from "./stats-adapter.ts";

type List = readonly unknown[];
type Words = readonly (readonly [RegExp, string])[];

const lists = (one: StatsCase): Readonly<Record<string, List>> =>
  Object.fromEntries(
    Object.entries(columnsOf(one)).flatMap(([name, list]) => (Array.isArray(list) ? [[name, list]] : [])),
  );
const isNumeric = (list: List) => list.every((each) => each === null || typeof each === "number");
const saidIn = (one: StatsCase): string => String(one.options.statistic ?? "");
const named = (one: StatsCase, names: Words) => names.find(([words]) => words.test(saidIn(one)))?.[1];

/** "a - b", "mean(spruce) - mean(cedar)": the two that are compared, in their order. */
function compared(one: StatsCase): readonly string[] {
  const said = [one.options.difference, one.options.statistic, one.options.contrast].map(String);
  for (const words of said) {
    const [, first, second] =
      /([\w.]+)\)?\s*(?:-|−|minus|less)\s*(?:\w+\s*(?:\(|of\s+))?([\w.]+)\)?\s*$/.exec(words) ?? [];
    if (first !== undefined && second !== undefined) return [first, second];
  }
  return [];
}

/** The column of labels of a long table and that of its values: by the options, the model, or their kinds. */
function groupedBy(one: StatsCase): { readonly value: List; readonly group: List } | null {
  const columns = lists(one);
  const { response, predictors } = modelOf(one);
  const find = (names: readonly unknown[], fits: (list: List) => boolean) =>
    names.map((name) => columns[String(name)]).find((list) => list !== undefined) ?? Object.values(columns).find(fits);
  const group = find([one.options.group, one.options.by, predictors[0], "group"], (list) => !isNumeric(list));
  const value = find(
    [one.options.response, one.options.value, response, "value"],
    (list) => list !== group && isNumeric(list),
  );
  return group === undefined || value === undefined || group === value ? null : { value, group };
}

/** The two groups as `a` and `b`: the columns that the difference names, those called so, the first two; or a long table parted by its labels. */
function twoGroups(one: StatsCase): Inputs {
  const columns = lists(one);
  const [first = "a", second = "b"] = compared(one);
  if (columns[first] !== undefined && columns[second] !== undefined) return { a: columns[first], b: columns[second] };
  if (columns.a !== undefined && columns.b !== undefined) return { a: columns.a, b: columns.b };
  const long = groupedBy(one);
  if (long) {
    const present = [...new Set(long.group.filter((each) => each !== null).map(String))].sort();
    const order = Array.isArray(one.options.group_order) ? one.options.group_order.map(String) : present;
    const names = present.includes(first) && present.includes(second) ? [first, second] : order;
    const of = (name: string | undefined) => long.value.filter((_, at) => String(long.group[at]) === name);
    return { a: of(names[0]), b: of(names[1]) };
  }
  const [a, b] = Object.values(columns).filter(isNumeric);
  return { a, b };
}

/** `two.sided` and the like with a hyphen; a null value under any of its names. */
function tested(one: StatsCase): Inputs {
  const { alternative, null_value, mu, margin } = one.options;
  return {
    ...(typeof alternative === "string" ? { alternative: alternative.replaceAll(/[._ ]/g, "-") } : {}),
    null_value: null_value ?? mu ?? margin,
  };
}
const ofTwoGroups = (more: (one: StatsCase) => Inputs = () => ({})): StatsAdapter => ({
  inputs: (one) => ({ level: one.options.level, ...twoGroups(one), ...tested(one), ...more(one) }),
});

const permuted: Words = [
  [/slope/i, "slope"],
  [/spearman|rank/i, "spearman"],
  [/pearson|correlation|^r\b/i, "pearson"],
  [/median/i, "difference-of-medians"],
  [/mean/i, "difference-of-means"],
];
const resampled: Words = [
  [/slope/i, "slope"],
  [/correlation|pearson|^r\b/i, "correlation"],
  [/mean.*(-|−|minus|difference)|difference.*mean/i, "difference-of-means"],
  [/trimmed|trim/i, "trimmed-mean"],
  [/median/i, "median"],
  [/standard deviation|\bsd\b/i, "sd"],
  [/mean/i, "mean"],
];

/** How many draws, from which seed, or all there are. */
const drawing = (one: StatsCase): Inputs => ({
  ...(one.options.mode === undefined
    ? {}
    : { mode: /every|exact|all|enumerat/i.test(String(one.options.mode)) ? "exact" : "drawn" }),
  draws: one.options.draws,
  seed: one.options.seed,
});

/** "slope of y on x", "mean of x": x and y by the names said, else by the columns called so, else in their order. */
function pairOf(one: StatsCase): Inputs {
  const columns = lists(one);
  const [, y, x] = /of\s+([\w.]+)\s+(?:on|against)\s+([\w.]+)/.exec(saidIn(one)) ?? [];
  const [, left, right] = /of\s+([\w.]+)\s+(?:and|with)\s+([\w.]+)/.exec(saidIn(one)) ?? [];
  const [, only] = /of\s+([\w.]+)\s*$/.exec(saidIn(one)) ?? [];
  const { response, predictors } = modelOf(one);
  const rest = Object.entries(columns).flatMap(([name, list]) => (isNumeric(list) ? [name] : []));
  const known = (names: readonly (string | undefined)[]) => names.find((name) => name !== undefined && name in columns);
  const nameX = known([x, left, only, String(one.options.x), predictors[0], "x", rest[0]]);
  const nameY = known([y, right, String(one.options.y), response, "y", rest.find((name) => name !== nameX)]);
  return { x: columns[nameX ?? ""], y: columns[nameY ?? ""] };
}

/** A column of labels: by the option of that name, by its own name, or the only one that is no quantity. */
function labelsOf(one: StatsCase, names: readonly string[]): List | undefined {
  const columns = lists(one);
  const said = names.map((name) => one.options[name]).concat(names);
  return said.map((name) => columns[String(name)]).find((list) => list !== undefined);
}

export const comparisonAdapters: StatsAdapters = {
  "welch-t": ofTwoGroups(),
  "paired-t": ofTwoGroups(),
  "mann-whitney": ofTwoGroups(),
  "hedges-g": ofTwoGroups(),
  "cliff-delta": ofTwoGroups((one) => ({
    quantile: /^t\b|student/i.test(String(one.options.quantile)) ? "t" : "normal",
  })),
  equivalence: {
    inputs: (one) => ({ ...twoGroups(one), margin: one.options.margin, alpha: one.options.alpha }),
  },
  permutation: {
    inputs: (one) => {
      const statistic = named(one, permuted);
      const isSplit = statistic === undefined || statistic.startsWith("difference");
      const isPaired =
        /paired|sign|flip/i.test(`${saidIn(one)} ${one.options.design ?? ""}`) || one.options.paired === true;
      const block = labelsOf(one, ["block", "within", "strata", ...(/within/i.test(saidIn(one)) ? ["group"] : [])]);
      return {
        ...(isSplit ? { ...twoGroups(one), ...(isPaired ? { paired: true } : {}) } : { ...pairOf(one), block }),
        statistic,
        ...drawing(one),
      };
    },
  },
  bootstrap: {
    inputs: (one) => {
      const statistic = named(one, resampled);
      const trim = /([\d.]+)\s*%/.exec(saidIn(one))?.[1];
      const level = one.options.level;
      const cluster = labelsOf(one, ["cluster"]);
      if (statistic === "difference-of-means") return { ...twoGroups(one), statistic, level, ...drawing(one) };
      const { x, y } = pairOf(one);
      const needsY = statistic === "slope" || statistic === "correlation";
      return {
        x,
        ...(needsY ? { y } : {}),
        cluster,
        statistic,
        trim: trim === undefined ? one.options.trim : Number(trim) / 100,
        level,
        ...drawing(one),
      };
    },
  },
};

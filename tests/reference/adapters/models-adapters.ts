// Models fitted step by step: the columns that options name become y, x1, x2 … and group.
import { columnsOf, modelOf, type StatsCase } from "../stats-case.ts";
import { alphabetical, isTexts, numberedPredictors, type StatsAdapters } from "./stats-adapter.ts";

/** The columns of a case whose options name none: those that are not the response or the groups. */
function mixedNames(one: StatsCase): {
  readonly response: string;
  readonly random: string;
  readonly predictors: readonly string[];
} {
  const { response, predictors } = modelOf(one);
  const columns = Object.entries(columnsOf(one));
  const isText = ([, list]: readonly [string, unknown]) =>
    Array.isArray(list) && list.some((each) => typeof each === "string");
  const random = String(
    one.options.random ?? /\|\s*(\w+)/.exec(String(one.options.model ?? ""))?.[1] ?? columns.find(isText)?.[0] ?? "",
  );
  const y = String(one.options.response ?? (response || "y"));
  const fixed = predictors.filter((name) => !name.includes("|"));
  const rest = columns.map(([name]) => name).filter((name) => name !== y && name !== random);
  return { response: y, random, predictors: one.options.model === undefined ? rest : fixed };
}

/** The words of a predictor in their order: those that the coefficients' names carry, after the one that they leave out. */
function levelsOf(one: StatsCase, name: string): readonly string[] | undefined {
  const column = columnsOf(one)[name];
  if (!Array.isArray(column) || !column.some((each) => typeof each === "string")) return undefined;
  const coefficients = [one.options.coefficient_order ?? []].flat().map(String);
  const after = coefficients.filter((each) => each.startsWith(name)).map((each) => each.slice(name.length));
  const first = [...new Set(column.map(String))].filter((level) => !after.includes(level)).sort();
  return [...first, ...after];
}

export const modelsAdapters: StatsAdapters = {
  "proportional-odds": {
    inputs: (one) => {
      const columns = columnsOf(one);
      const predictors = [one.options.predictors ?? []].flat().map(String);
      const orders = predictors.flatMap((name, at) => {
        const levels = levelsOf(one, name);
        return levels === undefined ? [] : [[`x${at + 1}_levels`, levels]];
      });
      const { weights, levels, response } = one.options;
      return {
        y: columns[String(response ?? "y")],
        ...numberedPredictors(one, predictors),
        ...Object.fromEntries(orders),
        ...(levels === undefined || levels === null ? {} : { levels }),
        ...(weights === undefined || weights === null ? {} : { weights: columns[String(weights)] }),
      };
    },
  },
  "firth-logistic": {
    inputs: (one) => ({
      y: columnsOf(one)[String(one.options.response ?? "y")],
      ...numberedPredictors(one, [one.options.predictors ?? []].flat().map(String)),
      level: one.options.level,
    }),
  },
  "mixed-model": {
    inputs: (one) => {
      const { response, random, predictors } = mixedNames(one);
      const columns = columnsOf(one);
      const order = one.options.group_order;
      const group = columns[random];
      return {
        y: columns[response],
        group: Array.isArray(group) ? group.map((each: unknown) => (each === null ? null : String(each))) : group,
        ...numberedPredictors(one, predictors),
        ...(Array.isArray(order) ? { group_order: order } : isTexts(group) ? { group_order: alphabetical(group) } : {}),
      };
    },
  },
};

// Models fitted step by step: the columns that options name become y, x1, x2 … and group.
import { columnsOf, modelOf, type StatsCase } from "../stats-case.ts";
import { numberedPredictors, type StatsAdapters } from "./stats-adapter.ts";

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

export const modelsAdapters: StatsAdapters = {
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
        ...(Array.isArray(order) ? { group_order: order } : {}),
      };
    },
  },
};

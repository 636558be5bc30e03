// Descriptions of one column, one-way tables, charts of the shop: columns by the names that the options give them, else by their kind.
import { columnsOf, type Inputs, modelOf, type StatsCase } from "../stats-case.ts";
import { namedColumns, plainInputs, type StatsAdapter, type StatsAdapters } from "./stats-adapter.ts";

const lists = (one: StatsCase): readonly (readonly [string, readonly unknown[]])[] =>
  Object.entries(columnsOf(one)).flatMap(([name, list]) => (Array.isArray(list) ? [[name, list] as const] : []));
const isNumeric = (list: readonly unknown[]) => list.every((each) => each === null || typeof each === "number");

/** The one column of numbers: the model's or the option's, `x`, or the only one there is. */
function onlyColumn(one: StatsCase): Inputs {
  const columns = columnsOf(one);
  const { response } = modelOf(one);
  const named = [one.options.column, one.options.response, response, "x"].find(
    (name) => typeof name === "string" && name in columns,
  );
  const x = named === undefined ? lists(one).find(([, list]) => isNumeric(list))?.[1] : columns[String(named)];
  return { ...plainInputs(one), x };
}
const ofOneColumn: StatsAdapter = { inputs: onlyColumn };

/** `value ~ group`, or the columns that the options name. */
function grouped(one: StatsCase): Inputs {
  const columns = columnsOf(one);
  const { response, predictors } = modelOf(one);
  return {
    ...plainInputs(one),
    ...(response === "" ? {} : { value: columns[response] }),
    ...(predictors[0] === undefined ? {} : { group: columns[predictors[0]] }),
    ...namedColumns(one, { value: "response" }),
    ...namedColumns(one, { value: "value", group: "group" }),
  };
}
const ofGroups: StatsAdapter = { inputs: grouped };

export const shopAdapters: StatsAdapters = {
  descriptive: ofOneColumn,
  "descriptive-nist": ofOneColumn,
  "individuals-chart": ofOneColumn,
  cusum: ofOneColumn,
  ewma: ofOneColumn,
  "anova-nist": ofGroups,
  "anova-welch": ofGroups,
  "games-howell": ofGroups,
  "kruskal-wallis": ofGroups,
};

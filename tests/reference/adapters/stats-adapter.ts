// How the cases of one method become inputs of its line, and its result the names of their fields. By method, never by case.
import { columnsOf, type Inputs, modelOf, type StatsCase } from "../stats-case.ts";

type Fields = Readonly<Record<string, unknown>>;
export type StatsAdapter = {
  readonly inputs: (one: StatsCase) => Inputs;
  /** The result under the names of the case; left out where they are the same. */
  readonly fields?: (result: Fields, one: StatsCase) => Fields;
};

/** Inputs that are columns, which an option may name. */
const COLUMNS = /^(x|y|a|b|value|group|cluster)$/;

/** What most methods take: the columns and the options by their names, `y`, `x` out of the model, and columns that options name. */
export function plainInputs(one: StatsCase): Inputs {
  const columns = columnsOf(one);
  const { response, predictors } = modelOf(one);
  const [x] = predictors;
  const named = Object.entries(one.options).flatMap(([name, of]) =>
    COLUMNS.test(name) && typeof of === "string" && of in columns ? [[name, columns[of]] as const] : [],
  );
  return {
    ...columns,
    ...one.options,
    ...Object.fromEntries(named),
    ...(response === "" ? {} : { y: columns[response] }),
    ...(x === undefined ? {} : { x: columns[x] }),
  };
}

export const isTexts = (list: unknown): list is readonly (string | null)[] =>
  Array.isArray(list) && list.every((each) => each === null || typeof each === "string");

/** The labels that there are, by code point, also those that are numerals: the order of groups that a case has where it says none. */
export const alphabetical = (list: readonly (string | null)[]): readonly string[] =>
  [...new Set(list.filter((each) => each !== null))].sort();

/** Columns named by options: `{ y: "response" }` gives the method's `y` the column that the option `response` names. */
export const namedColumns = (one: StatsCase, names: Readonly<Record<string, string>>): Inputs =>
  Object.fromEntries(
    Object.entries(names)
      .filter(([, option]) => one.options[option] !== undefined && one.options[option] !== null)
      .map(([input, option]) => [input, columnsOf(one)[String(one.options[option])]]),
  );

/** Columns of a case that are no predictors of its model, so that one called x2 is not taken for the second of them. */
export function withoutOthers(one: StatsCase, inputs: Inputs): Inputs {
  const { predictors } = modelOf(one);
  return predictors.length === 0
    ? inputs
    : Object.fromEntries(Object.entries(inputs).filter(([name]) => !/^x\d*$/.test(name) || !(name in one.data)));
}

/** Several predictors as x1, x2, …: by the model, or by the list of an option. */
export function numberedPredictors(one: StatsCase, names: readonly string[] = modelOf(one).predictors): Inputs {
  const columns = columnsOf(one);
  return Object.fromEntries(names.map((name, at) => [`x${at + 1}`, columns[name]]));
}

const isQuantity = (list: unknown): boolean =>
  Array.isArray(list) && list.every((each) => each === null || typeof each === "number");

/** Two quantities that count alike: x and y by their names, else in their order. */
export const twoColumns: StatsAdapter = {
  inputs: (one) => {
    const lists = Object.values(columnsOf(one)).filter(isQuantity);
    return { ...(lists.length === 2 ? { x: lists[0], y: lists[1] } : {}), ...plainInputs(one) };
  },
};

export type StatsAdapters = Readonly<Record<string, StatsAdapter>>;

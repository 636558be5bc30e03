// How the cases of one method become inputs of its line, and its result the names of their fields. By method, never by case.
import { columnsOf, type Inputs, modelOf, type StatsCase } from "../stats-case.ts";

type Fields = Readonly<Record<string, unknown>>;
export type StatsAdapter = {
  readonly inputs: (one: StatsCase) => Inputs;
  /** The result under the names of the case; left out where they are the same. */
  readonly fields?: (result: Fields, one: StatsCase) => Fields;
};

/** What most methods take: the columns and the options by their names, and `y`, `x` out of the model. */
export function plainInputs(one: StatsCase): Inputs {
  const columns = columnsOf(one);
  const { response, predictors } = modelOf(one);
  const [x] = predictors;
  return {
    ...columns,
    ...one.options,
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

/** Several predictors as x1, x2, …: by the model, or by the list of an option. */
export function numberedPredictors(one: StatsCase, names: readonly string[] = modelOf(one).predictors): Inputs {
  const columns = columnsOf(one);
  return Object.fromEntries(names.map((name, at) => [`x${at + 1}`, columns[name]]));
}

export type StatsAdapters = Readonly<Record<string, StatsAdapter>>;

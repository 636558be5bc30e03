// Least squares and its kin: the model's column names become y, x, x1, x2 …
import { columnsOf, type Inputs, modelOf, type StatsCase } from "../stats-case.ts";
import {
  alphabetical,
  isTexts,
  namedColumns,
  numberedPredictors,
  plainInputs,
  type StatsAdapters,
  twoColumns,
  withoutOthers,
} from "./stats-adapter.ts";

/** Values at which a line is read, one list a predictor. */
function pointsOf(one: StatsCase): Readonly<Record<string, unknown>> {
  const points = one.options["predict_at"] as Readonly<Record<string, unknown>> | undefined;
  return Object.fromEntries(modelOf(one).predictors.map((name, at) => [`at_x${at + 1}`, points?.[name]]));
}

/** Where a line is read: a list, or one place; by the predictor's name where the case says so. */
function placesOf(one: StatsCase): Inputs {
  const said = one.options.predict_at;
  const list = typeof said === "object" && said !== null && !Array.isArray(said) ? Object.values(said)[0] : said;
  return list === undefined || list === null ? {} : { predict_at: [list].flat() };
}

/** The weights that an option names, where it is one word. */
const weightsOf = (one: StatsCase): Inputs => {
  const named = columnsOf(one)[String(one.options.weights)];
  return named === undefined ? {} : { w: named };
};

/** x where one quantity explains, else x1, x2, … */
function explaining(one: StatsCase): Inputs {
  const { x, ...rest } = plainInputs(one);
  const others = withoutOthers(one, rest);
  return modelOf(one).predictors.length > 1 ? { ...others, ...numberedPredictors(one) } : { ...others, x };
}

/** A polynomial of one quantity, or several quantities: by the model's names, or by those of the data where it has none of them. */
function polynomial(one: StatsCase): Inputs {
  const model = String(one.options.model ?? "");
  const { y, ...columns } = columnsOf(one);
  const [, degree, of] = /polynomial of degree (\d+)(?: in (\S+))?/.exec(model) ?? [];
  const { response, predictors, constant } = modelOf(one);
  const isNamed = predictors.length > 0 && predictors.every((name) => name in columns);
  const x = columns[of ?? ""] ?? columns.x;
  return {
    ...(degree !== undefined ? { x, degree: Number(degree) } : {}),
    ...(degree === undefined && !isNamed ? columns : {}),
    ...(degree === undefined && isNamed
      ? predictors.length === 1
        ? { x: columns[String(predictors[0])] }
        : numberedPredictors(one)
      : {}),
    y: columnsOf(one)[response] ?? y,
    constant,
    level: one.options.level,
  };
}

export const regressionAdapters: StatsAdapters = {
  "ols-multiple": {
    inputs: (one) => {
      const { x: _first, ...rest } = plainInputs(one);
      return { ...withoutOthers(one, rest), ...numberedPredictors(one), ...pointsOf(one) };
    },
  },
  "ols-nist": { inputs: polynomial },
  ols: { inputs: (one) => ({ ...plainInputs(one), ...placesOf(one) }) },
  "ols-origin": { inputs: (one) => ({ ...plainInputs(one), ...placesOf(one) }) },
  "ols-weighted": {
    inputs: (one) => ({ ...plainInputs(one), ...placesOf(one), ...weightsOf(one) }),
  },
  "power-law": { inputs: (one) => ({ ...plainInputs(one), ...placesOf(one) }) },
  kendall: twoColumns,
  pearson: twoColumns,
  spearman: twoColumns,
  "partial-correlation": {
    inputs: (one) => {
      const columns = columnsOf(one);
      const [x, y] = [one.options.between].flat().map(String);
      const given = [one.options.given].flat().map(String);
      return {
        x: columns[x ?? ""],
        y: columns[y ?? ""],
        ...Object.fromEntries(given.map((name, at) => [`z${at + 1}`, columns[name]])),
        method: one.options.method ?? "pearson",
        level: one.options.level,
      };
    },
  },
  influence: {
    inputs: (one) => {
      const columns = columnsOf(one);
      const { predictors } = modelOf(one);
      return {
        ...withoutOthers(one, plainInputs(one)),
        ...Object.fromEntries(predictors.map((name, at) => [`x${at === 0 ? "" : at + 1}`, columns[name]])),
      };
    },
    fields: (result, one) => ({
      ...result,
      ...Object.fromEntries(
        modelOf(one).predictors.map((name, at) => [`dfbetas_${name}`, result[`dfbetas_x${at === 0 ? "" : at + 1}`]]),
      ),
    }),
  },
  lad: { inputs: (one) => ({ ...explaining(one), constant: modelOf(one).constant }) },
  "robust-regression": { inputs: explaining },
  "robust-se": { inputs: explaining },
  "cluster-robust": { inputs: (one) => ({ ...explaining(one), ...namedColumns(one, { cluster: "cluster" }) }) },
  ancova: {
    inputs: (one) => {
      const named = namedColumns(one, { y: "response", x: "covariate", group: "group" });
      return {
        ...(isTexts(named.group) ? { group_order: alphabetical(named.group) } : {}),
        ...plainInputs(one),
        ...named,
      };
    },
  },
};

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
} from "./stats-adapter.ts";

/** Values at which a line is read, one list a predictor. */
function pointsOf(one: StatsCase): Readonly<Record<string, unknown>> {
  const points = one.options["predict_at"] as Readonly<Record<string, unknown>> | undefined;
  return Object.fromEntries(modelOf(one).predictors.map((name, at) => [`at_x${at + 1}`, points?.[name]]));
}

/** x where one quantity explains, else x1, x2, … */
function explaining(one: StatsCase): Inputs {
  const { x, ...rest } = plainInputs(one);
  return modelOf(one).predictors.length > 1 ? { ...rest, ...numberedPredictors(one) } : { ...rest, x };
}

export const regressionAdapters: StatsAdapters = {
  "ols-multiple": {
    inputs: (one) => {
      const { x: _first, ...rest } = plainInputs(one);
      return { ...rest, ...numberedPredictors(one), ...pointsOf(one) };
    },
  },
  "ols-nist": {
    inputs: (one) => {
      const model = String(one.options.model ?? "");
      const { y, ...columns } = columnsOf(one);
      const degree = /polynomial of degree (\d+)/.exec(model)?.[1];
      return {
        ...columns,
        y: columnsOf(one)[modelOf(one).response] ?? y,
        ...(degree === undefined ? {} : { degree: Number(degree) }),
        constant: !/~\s*(0|-1)\b/.test(model),
      };
    },
  },
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
        ...plainInputs(one),
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

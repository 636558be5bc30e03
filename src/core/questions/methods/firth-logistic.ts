import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { positiveDefinite } from "../../numerics/index.ts";
import { firthFit, logisticInformation } from "../fits/firth-fit.ts";
import { firthProfile } from "../fits/firth-profile.ts";
import { ones } from "../fits/linear-fit.ts";
import { plain } from "../inputs/complete-inputs.ts";
import { explainedBy, explainedByInputs, fitOf } from "../inputs/explained-by.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";

/** Whether a yes-or-no note goes with quantities, from few records, even where they part the yes from the no. */
export const firthLogistic: Method = {
  id: "firth-logistic",
  name: "Logistic regression with Firth's penalty",
  answers: "words",
  needs: { rows: 4 },
  inputs: { ...explainedByInputs, y: { kind: "quantities", meaning: "1 for yes, 0 for no" }, level: levelInput },
  fields: {
    coef: { meaning: "coefficients on the log odds, the constant first" },
    se: { meaning: "standard errors from the information at the estimate; judge by the interval" },
    penalized_loglik: { meaning: "penalized log likelihood" },
    ci95_low_profile: { meaning: "profile intervals, lower; absent where there is no bound" },
    ci95_high_profile: { meaning: "upper" },
    p_profile: { meaning: "p of each coefficient being zero, by the penalized likelihood ratio" },
    set_aside: { meaning: "records with a missing value" },
  },
  source: {
    citation: "Firth (1993), Biometrika 80, 27-38; Heinze and Schemper (2002), Statistics in Medicine 21, 2409-2419",
    basis: "published",
  },
  run: (inputs) => {
    const [level, data] = [levelFrom(inputs), explainedBy(inputs, [], 1)];
    if (!level.ok) return level;
    if (!data.ok) return data;
    const { y, columns, setAside } = data.value;
    if (!y.every((value) => value === 0 || value === 1))
      return declined("out-of-domain", { name: "y", needed: "1 for yes and 0 for no" });
    if (y.every((value) => value === y[0]))
      return declined("one-group", { column: "y", group: y[0] === 1 ? "all yes" : "all no" });
    const rank = fitOf(data.value, 0.95);
    if (!rank.ok) return rank;
    // Columns in their own size, so that steps and stopping are alike for all; coefficients are brought back at the end.
    const sizes = columns.map((column) => column.reduce((most, value) => Math.max(most, Math.abs(value)), 0));
    const X = [ones(y.length), ...columns.map((column, j) => column.map((value) => value / (sizes[j] as number)))];
    const scale = Float64Array.of(1, ...sizes);
    const scaled = { X, y };
    const top = firthFit(scaled, new Float64Array(X.length));
    if (!top) return declined("not-converged", { name: "the penalized likelihood" });
    const inverse = positiveDefinite(logisticInformation(scaled, top.place).information, X.length)?.inverse();
    if (!inverse) return declined("not-converged", { name: "the penalized likelihood" });
    const errors = Float64Array.from(X, (_, j) => Math.sqrt(inverse[j * X.length + j] as number));
    const profiles = X.map((_, j) => firthProfile(scaled, top, j, errors[j] as number, level.value));
    const back = (values: ArrayLike<number>) =>
      plain(Float64Array.from(values, (value, j) => value / (scale[j] as number)));
    // The determinant of the information grows with the size of each column.
    const logSizes = sizes.reduce((sum, size) => sum + Math.log(size), 0);
    return succeeded({
      coef: back(top.place),
      se: back(errors),
      penalized_loglik: top.height + logSizes,
      ci95_low_profile: back(profiles.map(({ low }) => low)),
      ci95_high_profile: back(profiles.map(({ high }) => high)),
      p_profile: plain(profiles.map(({ p }) => p)),
      set_aside: setAside,
    });
  },
};

import type { InputSpec, Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { chiSquareUpperTail, leastSquares, normalUpperTail, positiveDefinite } from "../../numerics/index.ts";
import { ones } from "../fits/linear-fit.ts";
import { orderedLogitAt, orderedLogitFit } from "../fits/ordered-logit-fit.ts";
import { plain } from "../inputs/complete-inputs.ts";
import { gradedRecords } from "../inputs/graded-records.ts";

const NAMES = ["x1", "x2", "x3", "x4", "x5", "x6", "x7", "x8"];
/** Log odds ratios of one whole spread of a column beyond this mean that it parts the grades. */
const APART = 30;

const predictorInputs: Readonly<Record<string, InputSpec>> = Object.fromEntries([
  [
    "x",
    {
      kind: "grades",
      optional: true,
      meaning: "quantity (numbers) or words that may explain the grade, where there is one alone",
    },
  ],
  ...NAMES.map((name) => [
    name,
    { kind: "grades", optional: true, meaning: "one of several quantities or words that may explain it" },
  ]),
  ...["x", ...NAMES].map((name) => [
    `${name}_levels`,
    {
      kind: "labels",
      optional: true,
      meaning: `words of ${name} in their order; the others are set against the first`,
    },
  ]),
]) as Record<string, InputSpec>;

/** Grades against quantities: log odds of grade k or lower = threshold k less the slopes times the quantities, so a positive slope moves towards higher grades. */
export const proportionalOdds: Method = {
  id: "proportional-odds",
  name: "Ordered logit (proportional odds)",
  answers: "relation",
  needs: { rows: 4 },
  inputs: {
    y: { kind: "grades", meaning: "grade of each record, numbers or words" },
    levels: {
      kind: "labels",
      optional: true,
      meaning: "grades from lowest to highest; numbers by size or words by name unless given",
    },
    ...predictorInputs,
    weights: { kind: "quantities", optional: true, meaning: "how many records each stands for" },
  },
  fields: {
    names: { meaning: "what each coefficient is of: an input, or a word of it" },
    coef: { meaning: "coefficients; positive towards higher grades" },
    se: { meaning: "their standard errors" },
    z: { meaning: "coefficient over standard error" },
    p: { meaning: "two-sided p" },
    odds_ratio: { meaning: "odds of a higher grade, for one more of the quantity" },
    thresholds: { meaning: "log odds of grade k or lower where all quantities are zero" },
    thresholds_se: { meaning: "their standard errors" },
    levels: { meaning: "grades that occur, lowest first" },
    loglik: { meaning: "log likelihood" },
    deviance: { meaning: "minus twice it" },
    lr_chi2: { meaning: "twice the gain over thresholds alone" },
    lr_df: { meaning: "its degrees of freedom" },
    lr_p: { meaning: "its p" },
    set_aside: { meaning: "records with a missing value" },
  },
  source: { citation: "McCullagh (1980), JRSS B 42, 109-142", basis: "published" },
  run: (inputs) => {
    const records = gradedRecords(inputs);
    if (!records.ok) return records;
    const { levels, codes, weights, design, setAside } = records.value;
    const { columns, names } = design;
    const flat = columns.findIndex((column) => column.every((value) => value === column[0]));
    if (flat >= 0) return declined("no-spread", { column: names[flat] ?? "x1" });
    const rank = leastSquares([ones(codes.length), ...columns], Float64Array.from(codes));
    if (rank.rank <= columns.length)
      return declined("collinear", {
        column: rank.dependent.map((at) => names[at - 1] ?? "the constant").join(" and "),
      });
    // Columns from their middle and in their own size, so that steps and stopping are alike for all.
    const centres = columns.map((column) => column.reduce((sum, value) => sum + value / column.length, 0));
    const sizes = columns.map((column, j) =>
      column.reduce((most, value) => Math.max(most, Math.abs(value - (centres[j] as number))), 0),
    );
    const X = columns.map((column, j) =>
      column.map((value) => (value - (centres[j] as number)) / (sizes[j] as number)),
    );
    const data = { X, codes, weights, grades: levels.length };
    const [top, bare] = [orderedLogitFit(data), orderedLogitFit({ ...data, X: [] })];
    const cuts = levels.length - 1;
    if (!top || !bare || top.place.subarray(cuts).some((slope) => Math.abs(slope) > APART))
      return declined("not-converged", { name: "the likelihood (the quantities may part the grades altogether)" });
    const at = orderedLogitAt(data, top.place);
    const size = cuts + X.length;
    const inverse = at ? positiveDefinite(at.information, size)?.inverse() : undefined;
    if (!inverse) return declined("not-converged", { name: "the likelihood" });
    // Back to the columns as given: slopes over size, thresholds moved by the centres.
    const moved = (slopes: ArrayLike<number>) =>
      centres.reduce((sum, centre, j) => sum + (centre / (sizes[j] as number)) * (slopes[j] as number), 0);
    const slopes = top.place.subarray(cuts);
    const coef = slopes.map((slope, j) => slope / (sizes[j] as number));
    const se = slopes.map((_, j) => Math.sqrt(inverse[(cuts + j) * size + cuts + j] as number) / (sizes[j] as number));
    const thresholds = top.place.slice(0, cuts).map((cut) => cut + moved(slopes));
    const thresholdErrors = thresholds.map((_, k) => {
      const pull = Float64Array.from({ length: size }, (_, j) =>
        j === k ? 1 : j >= cuts ? (centres[j - cuts] as number) / (sizes[j - cuts] as number) : 0,
      );
      let variance = 0;
      for (let a = 0; a < size; a++)
        for (let b = 0; b < size; b++)
          variance += (pull[a] as number) * (pull[b] as number) * (inverse[a * size + b] as number);
      return Math.sqrt(variance);
    });
    const z = coef.map((value, j) => value / (se[j] as number));
    const gain = 2 * (top.height - bare.height);
    return succeeded({
      names,
      coef: plain(coef),
      se: plain(se),
      z: plain(z),
      p: plain(z.map((value) => 2 * normalUpperTail(Math.abs(value)))),
      odds_ratio: plain(coef.map(Math.exp)),
      thresholds: plain(thresholds),
      thresholds_se: plain(thresholdErrors),
      levels,
      loglik: top.height,
      deviance: -2 * top.height,
      lr_chi2: gain,
      lr_df: columns.length,
      lr_p: chiSquareUpperTail(Math.max(0, gain), columns.length),
      set_aside: setAside,
    });
  },
};

import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { compensatedSum, leastSquares } from "../../numerics/index.ts";
import { ones } from "../fits/linear-fit.ts";
import { quantileRegression } from "../fits/quantile-regression.ts";
import { plain } from "../inputs/complete-inputs.ts";
import { explainedBy, explainedByInputs } from "../inputs/explained-by.ts";
import { numberInput } from "../inputs/number-input.ts";

/**
 * The line or plane with as much of the records below it as tau says, half unless given: the sum of absolute residuals, weighted tau above and
 * 1 - tau below, is least. Far records pull no more than near ones.
 */
export const leastAbsolute: Method = {
  id: "lad",
  name: "Median and quantile regression",
  answers: "relation",
  needs: { rows: 3 },
  inputs: {
    ...explainedByInputs,
    tau: {
      kind: "number",
      above: 0,
      below: 1,
      optional: true,
      meaning: "share of the records below; 0.5 unless given",
    },
    constant: { kind: "yes-no", optional: true, meaning: "whether there is a constant; yes unless given" },
  },
  fields: {
    n: { meaning: "records used" },
    set_aside: { meaning: "records with a missing value" },
    tau: { meaning: "share of the records below" },
    coef: { meaning: "coefficients: the constant, then the quantities in order" },
    sum_abs: { meaning: "sum of absolute residuals: it decides where planes tie" },
    loss: { meaning: "sum of tau times those above and 1 - tau times those below: what is least" },
    unique: { meaning: "whether no other plane is as good" },
    chosen: { meaning: "which of several equally good planes is given" },
  },
  source: {
    citation:
      "Koenker and Bassett (1978), Econometrica 46, 33-50; Barrodale and Roberts (1973), SIAM J. Numer. Anal. 10, 839-848",
    basis: "published",
  },
  run: (inputs) => {
    const tau = numberInput(inputs, "tau", { above: 0, below: 1, otherwise: 0.5 });
    if (!tau.ok) return tau;
    const constant = inputs.constant !== false;
    const data = explainedBy(inputs, [], constant ? 0 : -1);
    if (!data.ok) return data;
    const { y, names, columns, setAside } = data.value;
    const flat = columns.findIndex((column) => column.every((value) => value === (constant ? column[0] : 0)));
    if (flat >= 0) return declined("no-spread", { column: names[flat] ?? "x" });
    const design = constant ? [ones(y.length), ...columns] : columns;
    const { rank, dependent } = leastSquares(design, y);
    const known = constant ? ["the constant", ...names] : names;
    if (rank < design.length)
      return declined("collinear", { column: dependent.map((at) => known[at] ?? "x").join(" and ") });
    const fit = quantileRegression(design, y, tau.value, constant);
    if (!fit?.coefficients.every(Number.isFinite)) return declined("not-finite", { name: "the plane" });
    const { residuals, isUnique } = fit;
    return succeeded({
      n: y.length,
      set_aside: setAside,
      tau: tau.value,
      coef: plain(fit.coefficients),
      sum_abs: compensatedSum(residuals.map(Math.abs)),
      loss: compensatedSum(residuals.map((r) => (r > 0 ? tau.value * r : (tau.value - 1) * r))),
      unique: isUnique,
      chosen: isUnique ? "the only best plane" : "one of several planes that are equally good",
    });
  },
};

import type { Method, MethodFields, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { plain } from "./complete-inputs.ts";
import { explainedBy, explainedByInputs } from "./explained-by.ts";
import { knownNumber } from "./known-number.ts";
import { explainedShare, type LinearFit, linearFit, ones } from "./linear-fit.ts";
import { polynomialFit } from "./polynomial-fit.ts";
import { sources } from "./sources.ts";

const MOST_DEGREE = 20;

function fieldsOf(
  fit: LinearFit,
  y: Float64Array,
  constant: boolean,
  coefficients: Float64Array,
  errors: Float64Array,
): MethodFields {
  const share = explainedShare(fit, y, constant);
  // What rounding leaves of an exact fit is no scatter.
  const isExact = fit.residualSumOfSquares <= 1e-20 * y.reduce((sum, value) => sum + value * value, 0);
  return {
    n: y.length,
    df_residual: fit.degreesOfFreedom,
    coef: plain(coefficients),
    se: plain(isExact ? errors.map(() => 0) : errors),
    sigma: isExact ? 0 : knownNumber(fit.sigma),
    r2: isExact ? 1 : knownNumber(share.r2),
    F: isExact ? null : knownNumber(share.F),
  };
}

/** Powers of one quantity. */
function polynomial(inputs: MethodInputs, degree: unknown): Outcome<MethodFields> {
  if (typeof degree !== "number" || !Number.isInteger(degree) || degree < 1 || degree > MOST_DEGREE)
    return declined("out-of-domain", { name: "degree", needed: `a whole number from 1 to ${MOST_DEGREE}` });
  const data = explainedBy(inputs, [], 0);
  if (!data.ok) return data;
  const { y, columns, setAside } = data.value;
  const [x = new Float64Array(), ...others] = columns;
  if (others.length > 0)
    return declined("out-of-domain", { name: "x", needed: "one quantity, where powers are asked for" });
  const distinct = new Set(x).size;
  if (distinct < 2) return declined("no-spread", { column: "x" });
  if (distinct <= degree) return declined("too-few-records", { have: distinct, need: degree + 1 });
  const { fit, coefficients, standardErrors } = polynomialFit(x, y, degree);
  if (fit.rank <= degree) return declined("collinear", { column: `a power of x up to ${degree}` });
  return succeeded({ ...fieldsOf(fit, y, true, coefficients, standardErrors), set_aside: setAside });
}

/** Quantities as they are, with a constant or without. */
function plainModel(inputs: MethodInputs, constant: boolean): Outcome<MethodFields> {
  const data = explainedBy(inputs, [], constant ? 0 : -1);
  if (!data.ok) return data;
  const { y, names, columns, setAside } = data.value;
  const design = constant ? [ones(y.length), ...columns] : columns;
  const fit = linearFit(design, y);
  if (fit.rank < design.length)
    return declined("collinear", {
      column: fit.dependent.map((at) => (constant ? ["the constant", ...names] : names)[at] ?? "x").join(" and "),
    });
  return succeeded({ ...fieldsOf(fit, y, constant, fit.coefficients, fit.standardErrors), set_aside: setAside });
}

/** A linear model held to certified digits: powers of one quantity, or several quantities, with or without a constant. */
export const linearModel: Method = {
  id: "ols-nist",
  name: "Least squares of a polynomial or of several quantities",
  answers: "relation",
  needs: { rows: 2 },
  inputs: {
    ...explainedByInputs,
    degree: {
      kind: "number",
      atLeast: 1,
      atMost: MOST_DEGREE,
      whole: true,
      optional: true,
      meaning: "highest power of x; 1 unless given",
    },
    constant: { kind: "yes-no", optional: true, meaning: "whether there is a constant; yes unless given" },
  },
  fields: {
    n: { meaning: "records used" },
    df_residual: { meaning: "degrees of freedom" },
    coef: { meaning: "coefficients: the constant, then rising powers or the quantities in order" },
    se: { meaning: "their standard errors" },
    sigma: { meaning: "residual standard deviation" },
    r2: { meaning: "share of the scatter explained; about zero without a constant" },
    F: { meaning: "F of the whole fit" },
    set_aside: { meaning: "records with a missing value" },
  },
  source: sources.draperSmith,
  run: (inputs) =>
    inputs.degree === undefined || (inputs.degree === 1 && inputs.x === undefined)
      ? plainModel(inputs, inputs.constant !== false)
      : inputs.constant === false
        ? declined("out-of-domain", { name: "constant", needed: "a constant, where powers are asked for" })
        : polynomial(inputs, inputs.degree),
};

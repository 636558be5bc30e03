import type { Method, MethodFields, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { fUpperTail, leastSquares, tQuantile, tTwoSided } from "../../numerics/index.ts";
import { ones } from "../fits/linear-fit.ts";
import { type Design, designOf, powersOf, preciseFit } from "../fits/precise-fit.ts";
import { plain } from "../inputs/complete-inputs.ts";
import { type ExplainedBy, explainedBy, explainedByInputs } from "../inputs/explained-by.ts";
import { knownNumber } from "../inputs/known-number.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";

const MOST_DEGREE = 20;

/** Powers of one quantity: as many different values as coefficients are needed, and suffice. */
function polynomial({ columns: [x, ...others] }: ExplainedBy, degree: number, constant: boolean): Outcome<Design> {
  if (!x || others.length > 0)
    return declined("out-of-domain", { name: "x", needed: "one quantity, where powers are asked for" });
  const distinct = new Set(constant ? x : x.filter((value) => value !== 0)).size;
  if (distinct < 2) return declined("no-spread", { column: "x" });
  const need = degree + (constant ? 1 : 0);
  return distinct < need
    ? declined("too-few-records", { have: distinct, need })
    : succeeded(powersOf(x, degree, constant));
}

/** Quantities as they are. One that says the same as the others, to 13 digits, is named. */
function plainModel({ y, names, columns }: ExplainedBy, constant: boolean): Outcome<Design> {
  const design = constant ? [ones(y.length), ...columns] : columns;
  const { rank, dependent } = leastSquares(design, y);
  if (rank === design.length) return succeeded(designOf(design));
  const flat = columns.findIndex((column) => column.every((value) => value === (constant ? column[0] : 0)));
  if (flat >= 0) return declined("no-spread", { column: names[flat] ?? "x" });
  const known = constant ? ["the constant", ...names] : names;
  return declined("collinear", { column: dependent.map((at) => known[at] ?? "x").join(" and ") });
}

function fieldsOf(design: Design, data: ExplainedBy, constant: boolean, level: number): Outcome<MethodFields> {
  const { y, setAside } = data;
  const fit = preciseFit(design, y, constant);
  if (!fit.coefficients.every(Number.isFinite)) return declined("not-finite", { name: "the fit" });
  const df = fit.degreesOfFreedom;
  const df1 = fit.coefficients.length - (constant ? 1 : 0);
  const half = df > 0 ? tQuantile((1 + level) / 2, df) : Number.NaN;
  const end = (side: number) => fit.coefficients.map((b, j) => b + side * half * (fit.standardErrors[j] as number));
  const t = fit.coefficients.map((b, j) => (fit.sigma > 0 ? b / (fit.standardErrors[j] as number) : Number.NaN));
  return succeeded({
    n: y.length,
    set_aside: setAside,
    df_residual: df,
    coef: plain(fit.coefficients),
    se: plain(fit.standardErrors),
    t: plain(t),
    p: plain(t.map((value) => (Number.isFinite(value) ? tTwoSided(value, df) : value))),
    ci95_low: plain(end(-1)),
    ci95_high: plain(end(1)),
    sigma: knownNumber(fit.sigma),
    r2: knownNumber(fit.r2),
    F: knownNumber(fit.F),
    F_df1: df1,
    F_df2: df,
    F_p: Number.isFinite(fit.F) ? knownNumber(fUpperTail(fit.F, df1, df)) : null,
  });
}

function degreeFrom({ degree = 1, x }: MethodInputs): Outcome<number> {
  if (typeof degree !== "number" || !Number.isInteger(degree) || degree < 1 || degree > MOST_DEGREE)
    return declined("out-of-domain", { name: "degree", needed: `a whole number from 1 to ${MOST_DEGREE}` });
  return succeeded(x === undefined && degree === 1 ? 0 : degree);
}

/** A linear model held to certified digits, in numbers of 31: powers of one quantity, or several quantities, with or without a constant. */
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
    level: levelInput,
  },
  fields: {
    n: { meaning: "records used" },
    set_aside: { meaning: "records with a missing value" },
    df_residual: { meaning: "degrees of freedom" },
    coef: { meaning: "coefficients: the constant, then rising powers or the quantities in order" },
    se: { meaning: "their standard errors; 0 where the fit is exact" },
    t: { meaning: "coefficient over standard error; withheld where the fit is exact" },
    p: { meaning: "two-sided p" },
    ci95_low: { meaning: "lower ends of the t intervals" },
    ci95_high: { meaning: "upper ends" },
    sigma: { meaning: "residual standard deviation" },
    r2: { meaning: "share of the scatter explained; about zero without a constant" },
    F: { meaning: "F of the whole fit; withheld where the fit is exact" },
    F_df1: { meaning: "its first degrees of freedom" },
    F_df2: { meaning: "its second" },
    F_p: { meaning: "its p" },
  },
  source: {
    citation:
      "Bjorck (1996), Numerical Methods for Least Squares Problems, sections 2.3 and 2.4; checked against the NIST Statistical Reference Datasets",
    basis: "published",
  },
  run: (inputs) => {
    const [level, degree] = [levelFrom(inputs), degreeFrom(inputs)];
    if (!level.ok) return level;
    if (!degree.ok) return degree;
    const constant = inputs.constant !== false;
    const data = explainedBy(inputs, [], constant ? 0 : -1);
    if (!data.ok) return data;
    const design = degree.value > 0 ? polynomial(data.value, degree.value, constant) : plainModel(data.value, constant);
    return design.ok ? fieldsOf(design.value, data.value, constant, level.value) : design;
  },
};

import { declined, type Method, succeeded } from "../../base/index.ts";
import { plain } from "../inputs/complete-inputs.ts";
import { explainedBy, explainedByInputs, fitOf } from "../inputs/explained-by.ts";
import { numberInput, numberInputs } from "../inputs/number-input.ts";
import { consistentTuning } from "../robust/bisquare.ts";
import { huberFit } from "../robust/huber-fit.ts";
import { mmFit } from "../robust/mm-fit.ts";
import { ofOneSize } from "../robust/of-one-size.ts";
import { sFit } from "../robust/s-fit.ts";

const HALF = 1.54764;

const slopeInWords = (coefficients: unknown): string =>
  String(Number(Number((coefficients as readonly number[])[1]).toPrecision(3)));
/** A scale that is rounding alone, over the median deviation of y. */
const NOTHING = 1e-11;

/** Lines that a few wild records do not turn: Huber's, which far ones pull no harder than near ones, and MM, which leaves out those that are too far to belong. */
export const robustRegression: Method = {
  id: "robust-regression",
  name: "Robust regression (Huber and MM)",
  answers: "relation",
  needs: { rows: 5 },
  inputs: {
    ...explainedByInputs,
    huber_k: {
      kind: "number",
      above: 0,
      optional: true,
      meaning: "scales at which Huber's weights begin to fall; 1.345 unless given",
    },
    mm_c: {
      kind: "number",
      above: 0,
      optional: true,
      meaning: "scales at which MM leaves a record out; 4.685061 unless given",
    },
    s_breakdown: {
      kind: "number",
      above: 0,
      atMost: 0.5,
      optional: true,
      meaning: "share of wild records that the start and the scale of MM stand; 0.5 unless given",
    },
    s_c: {
      kind: "number",
      above: 0,
      optional: true,
      meaning: "bisquare of the start; what makes its scale that of normal data unless given",
    },
  },
  fields: {
    n: { meaning: "records used" },
    set_aside: { meaning: "records with a missing value" },
    huber_coef: { meaning: "constant and slopes by Huber's estimate" },
    huber_scale: { meaning: "its scale: median size of the residuals over 0.6745" },
    huber_weights: { meaning: "weight of each record, 1 for near ones" },
    huber_se: { meaning: "standard errors of the coefficients, with Huber's correction" },
    mm_coef: { meaning: "constant and slopes by the MM-estimate" },
    mm_scale: { meaning: "its scale, that of the S-estimate it starts from" },
    mm_weights: { meaning: "weight of each record, 0 for those left out" },
    mm_se: { meaning: "standard errors, which hold with an unequal scatter; null where the records do not give them" },
    left_out: { meaning: "records that MM gives no weight at all" },
    rival_coef: {
      meaning:
        "constant and slopes of another start that is as good within 2 % and more than two standard errors away; null where there is none",
    },
    chosen: { meaning: "how the start of MM was sought" },
  },
  source: {
    citation: "Huber (1981), Robust Statistics, chapter 7; Yohai (1987), Annals of Statistics 15, 642-656",
    basis: "published",
  },
  run: (inputs) => {
    const asked = numberInputs(inputs, {
      huber_k: { above: 0, otherwise: 1.345 },
      mm_c: { above: 0, otherwise: 4.685061 },
      s_breakdown: { above: 0, atMost: 0.5, otherwise: 0.5 },
    });
    if (!asked.ok) return asked;
    const { huber_k, mm_c, s_breakdown: breakdown } = asked.value;
    const s_c = numberInput(inputs, "s_c", {
      above: 0,
      otherwise: breakdown === 0.5 ? HALF : consistentTuning(breakdown),
    });
    if (!s_c.ok) return s_c;
    const tuning = { c: s_c.value, breakdown };
    const data = explainedBy(inputs, [], 0);
    if (!data.ok) return data;
    const { y, columns, setAside } = data.value;
    const need = 2 * columns.length + 3;
    if (y.length < need) return declined("too-few-records", { have: y.length, need });
    const straight = fitOf(data.value, 0.95);
    if (!straight.ok) return straight;
    const alike = ofOneSize(columns, y);
    const { X } = alike;
    const huber = huberFit(X, alike.y, huber_k);
    if (!huber) return declined("not-converged", { name: "Huber's estimate" });
    const start = sFit(X, alike.y, tuning);
    if (!start) return declined("not-converged", { name: "the S-estimate" });
    for (const { scale, residuals } of [huber, start]) {
      if (scale > NOTHING) continue;
      const on = residuals.reduce((count, r) => count + (Math.abs(r) <= NOTHING ? 1 : 0), 0);
      return on < y.length
        ? declined("most-on-one-plane", { count: on, of: y.length })
        : declined("perfect-fit", { column: "y" });
    }
    const mm = mmFit(X, alike.y, start, mm_c, tuning);
    if (!mm) return declined("not-converged", { name: "the MM-estimate" });
    const [found, errors] = [alike.plane(mm), alike.errors(mm)];
    const other = start.rival && alike.plane({ coefficients: start.rival });
    const isFar = other?.some((b, j) => j > 0 && !(Math.abs(b - (found[j] as number)) <= 2 * (errors[j] as number)));
    return succeeded({
      n: y.length,
      set_aside: setAside,
      huber_coef: plain(alike.plane(huber)),
      huber_scale: alike.size * huber.scale,
      huber_weights: plain(huber.weights),
      huber_se: plain(alike.errors(huber)),
      mm_coef: plain(found),
      mm_scale: alike.size * mm.scale,
      mm_weights: plain(mm.weights),
      mm_se: plain(errors),
      left_out: mm.weights.reduce((count, weight) => count + (weight > 0 ? 0 : 1), 0),
      rival_coef: other && isFar ? plain(other) : null,
      chosen: start.isAll
        ? `the start of MM is the best of those through every choice of ${X.length} records (${start.starts})`
        : `the start of MM is the best of those through ${start.starts} drawn choices of ${X.length} records`,
    });
  },
  cautions: (_, { left_out, n, rival_coef }) => [
    ...(rival_coef ? [{ code: "another-line-as-good", facts: { slope: slopeInWords(rival_coef) } } as const] : []),
    ...(Number(left_out) > 0
      ? [{ code: "records-without-weight", facts: { count: Number(left_out), of: Number(n) } } as const]
      : []),
  ],
};

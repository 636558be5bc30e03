import { declined, type Method, succeeded } from "../../base/index.ts";
import { mean, normalRangeMoments } from "../../numerics/index.ts";
import { chartValues } from "./chart-values.ts";

/** Sigma of single readings by the mean moving range of neighbours, which a drift inflates little. */
const sigmaByRanges = (values: readonly number[]): number =>
  mean(values.slice(1).map((value, i) => Math.abs(value - (values[i] as number)))) / normalRangeMoments(2).mean;

/**
 * Exponentially weighted means z_i = lambda x_i + (1 - lambda) z_(i-1), z_0 the target; limits target ± L sigma sqrt(lambda / (2 - lambda)
 * (1 - (1 - lambda)^(2i))), and those they tend to. x: readings in order, a missing one is left out; lambda in (0, 1]; L > 0; target the mean unless
 * given; sigma the mean moving range over d2 unless given.
 * Source: S. W. Roberts (1959), Technometrics 1, 239-250; NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
 */
export const ewma: Method = {
  id: "ewma",
  name: "Exponentially weighted means",
  answers: "rig",
  needs: { rows: 1 },
  inputs: {
    x: { kind: "quantities", meaning: "readings in the order in which they were taken" },
    target: { kind: "quantity", optional: true, meaning: "what they should be; their mean unless given" },
    sigma: {
      kind: "quantity",
      optional: true,
      above: 0,
      meaning: "standard deviation of a reading; by moving ranges unless given",
    },
    lambda: { kind: "number", optional: true, above: 0, atMost: 1, meaning: "weight of the newest reading, 0.2" },
    L: { kind: "number", optional: true, above: 0, meaning: "distance of the limits in sigma, 3" },
  },
  fields: {
    ewma: { meaning: "weighted mean after each reading" },
    upper: { meaning: "upper limit at each reading" },
    lower: { meaning: "lower limit at each reading" },
    upper_asymptotic: { meaning: "what the upper limits tend to" },
    lower_asymptotic: { meaning: "what the lower limits tend to" },
    out: { meaning: "places of weighted means outside the limits there, from 1" },
    out_asymptotic: { meaning: "places of those outside the limits that are tended to" },
    target: { meaning: "the target used" },
    sigma: { meaning: "the sigma used" },
    chosen: { meaning: "where target and sigma came from" },
  },
  source: {
    citation: "Roberts (1959), Technometrics 1, 239-250; NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4",
    basis: "published",
  },
  run: (inputs) => {
    const { lambda = 0.2, L = 3 } = inputs;
    const read = chartValues(inputs, inputs.sigma === undefined ? 2 : 1);
    if (!read.ok) return read;
    const { values, places } = read.value;
    const target = inputs.target ?? mean(values);
    const sigma = inputs.sigma ?? sigmaByRanges(values);
    if (typeof lambda !== "number" || !(lambda > 0 && lambda <= 1))
      return declined("out-of-domain", { name: "lambda", needed: "a number above 0 and at most 1" });
    if (typeof L !== "number" || !(L > 0)) return declined("out-of-domain", { name: "L", needed: "a number above 0" });
    if (typeof target !== "number" || !Number.isFinite(target))
      return declined("out-of-domain", { name: "target", needed: "a number" });
    if (sigma === 0 && inputs.sigma === undefined) return declined("no-spread", { column: "x" });
    if (typeof sigma !== "number" || !(sigma > 0) || !Number.isFinite(sigma))
      return declined("out-of-domain", { name: "sigma", needed: "a number above 0" });
    let last = 0;
    const away = values.map((value) => {
      last += lambda * (value - target - last);
      return last;
    });
    const whole = L * sigma * Math.sqrt(lambda / (2 - lambda));
    const half = values.map((_, i) => whole * Math.sqrt(-Math.expm1(2 * (i + 1) * Math.log1p(-lambda))));
    return succeeded({
      ewma: away.map((z) => target + z),
      upper: half.map((one) => target + one),
      lower: half.map((one) => target - one),
      upper_asymptotic: target + whole,
      lower_asymptotic: target - whole,
      out: places.filter((_, i) => Math.abs(away[i] as number) > (half[i] as number)),
      out_asymptotic: places.filter((_, i) => Math.abs(away[i] as number) > whole),
      target,
      sigma,
      chosen: `target ${inputs.target === undefined ? "the mean of the readings" : "as given"}, sigma ${inputs.sigma === undefined ? "the mean moving range over 1.1284" : "as given"}`,
    });
  },
};

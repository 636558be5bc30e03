import { declined, type Method, succeeded } from "../../base/index.ts";
import { mean, normalRangeMoments } from "../../numerics/index.ts";
import { chartValues } from "./chart-values.ts";

/** Range of each `span` neighbours, and the place of the last of them. */
const movingRanges = (values: readonly number[], span: number): readonly number[] =>
  values.slice(span - 1).map((_, i) => {
    const own = values.slice(i, i + span);
    return Math.max(...own) - Math.min(...own);
  });

/**
 * Individuals and moving ranges: centre the mean, sigma the mean moving range over d2 of the span, limits three sigma away; the ranges' upper limit is
 * D4 = 1 + 3 d3 / d2 times their mean. x: readings in order, at least span + 1; a missing one is left out and its neighbours become neighbours.
 * Source: W. A. Shewhart (1931), Economic Control of Quality; NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2.
 */
export const individualsChart: Method = {
  id: "individuals-chart",
  name: "Chart of single readings",
  answers: "rig",
  needs: { rows: 3 },
  inputs: {
    x: { kind: "quantities", meaning: "readings in the order in which they were taken" },
    span: { kind: "number", optional: true, whole: true, atLeast: 2, atMost: 100, meaning: "readings of a range, 2" },
    d2: {
      kind: "number",
      optional: true,
      above: 0,
      meaning: "mean range of so many normal values, where a rounded one of a table is wanted; computed unless given",
    },
    sigmas: { kind: "number", optional: true, above: 0, meaning: "distance of the limits in sigma, 3" },
  },
  fields: {
    center: { meaning: "mean of the readings" },
    mr: { meaning: "moving ranges, the first at the place of the span" },
    mr_bar: { meaning: "mean moving range" },
    d2: { meaning: "mean range of so many normal values that was used" },
    sigma_hat: { meaning: "mr_bar over d2" },
    upper: { meaning: "upper limit of readings" },
    lower: { meaning: "lower limit of readings" },
    mr_upper: { meaning: "upper limit of moving ranges" },
    mr_lower: { meaning: "lower limit of moving ranges, not below zero" },
    upper_d2_1128: { meaning: "upper limit with the tables' d2 = 1.128; for a span of two" },
    lower_d2_1128: { meaning: "lower limit with it" },
    out: { meaning: "places of readings outside their limits, from 1" },
    mr_out: { meaning: "places of readings whose moving range is outside its limits" },
  },
  source: {
    citation: "Shewhart (1931), Economic Control of Quality; NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2",
    basis: "memory",
  },
  run: (inputs) => {
    const { span = 2, sigmas = 3 } = inputs;
    if (typeof span !== "number" || !Number.isInteger(span) || span < 2 || span > 100)
      return declined("out-of-domain", { name: "span", needed: "a whole number from 2 to 100" });
    if (typeof sigmas !== "number" || !(sigmas > 0))
      return declined("out-of-domain", { name: "sigmas", needed: "a number above 0" });
    const read = chartValues(inputs, span + 1);
    if (!read.ok) return read;
    const { values, places } = read.value;
    const ranges = movingRanges(values, span);
    const [center, bar] = [mean(values), mean(ranges)];
    if (!(bar > 0)) return declined("no-spread", { column: "x" });
    if (!Number.isFinite(bar)) return declined("too-large", { name: "x", most: "1e300" });
    const { mean: computed, standardDeviation: d3 } = normalRangeMoments(span);
    const d2 = typeof inputs.d2 === "number" && inputs.d2 > 0 ? inputs.d2 : computed;
    const sigma = bar / d2;
    const [upper, lower] = [center + sigmas * sigma, center - sigmas * sigma];
    const reach = (sigmas * d3 * bar) / computed;
    const [rangeUpper, rangeLower] = [bar + reach, Math.max(0, bar - reach)];
    const tabled = span === 2 ? (sigmas * bar) / 1.128 : null;
    return succeeded({
      center,
      mr: ranges,
      mr_bar: bar,
      d2,
      sigma_hat: sigma,
      upper,
      lower,
      mr_upper: rangeUpper,
      mr_lower: rangeLower,
      upper_d2_1128: tabled === null ? null : center + tabled,
      lower_d2_1128: tabled === null ? null : center - tabled,
      out: places.filter((_, i) => (values[i] as number) > upper || (values[i] as number) < lower),
      mr_out: ranges.flatMap((own, i) =>
        own > rangeUpper || own < rangeLower ? [places[i + span - 1] as number] : [],
      ),
    });
  },
};

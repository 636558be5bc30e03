import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { fUpperTail, mean, sumOfSquares } from "../../numerics/index.ts";
import { fitAt, linearFit, ones } from "../fits/linear-fit.ts";
import { slopesWithinGroups } from "../fits/slopes-within-groups.ts";
import { completeInputs, plain } from "../inputs/complete-inputs.ts";
import { groupColumns, orderInput } from "../inputs/group-columns.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { sources } from "./sources.ts";

const needs = { rows: 5, groups: 2, distinct: { x: 2 } };

/** One slope common to all groups beside the slope across all and each group's own; whether the slopes differ; group means at one x. */
export const analysisOfCovariance: Method = {
  id: "ancova",
  name: "Common slope within groups",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
    group: { kind: "labels", meaning: "group of each record" },
    group_order: {
      kind: "labels",
      optional: true,
      meaning: "order of the groups in what is given; the rest follow by name",
    },
    level: levelInput,
  },
  fields: {
    pooled_slope: { meaning: "slope across all records" },
    common_slope: { meaning: "slope common to the groups" },
    se: { meaning: "its standard error" },
    t: { meaning: "slope over standard error" },
    p: { meaning: "two-sided p" },
    df: { meaning: "degrees of freedom" },
    ci95_low: { meaning: "interval, lower" },
    ci95_high: { meaning: "upper" },
    within_slopes: { meaning: "slopes of separate fits; withheld for a group whose x does not vary" },
    within_se: { meaning: "their standard errors" },
    F_interaction: { meaning: "F of unequal slopes" },
    df1_interaction: { meaning: "its first degrees of freedom: groups with a slope, less one" },
    df2_interaction: { meaning: "its second" },
    p_interaction: { meaning: "its p" },
    F_group: { meaning: "F of the label at the common slope" },
    p_group: { meaning: "its p" },
    adjusted_means: { meaning: "group means at the mean of x" },
    adjusted_se: { meaning: "their standard errors" },
    sigma: { meaning: "residual standard deviation" },
    reverses: { meaning: "whether the slope across all points the other way" },
  },
  source: sources.ancova,
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const complete = completeInputs(inputs, ["x", "y"], ["group"], needs);
    if (!complete.ok) return complete;
    const given = complete.value.arrays as { x: Float64Array; y: Float64Array };
    // A record is subtracted from all: an offset of 1e6 would cost the standard errors of means five figures.
    const height = given.y[0] as number;
    const x = given.x.map((value) => value - (given.x[0] as number));
    const y = given.y.map((value) => value - height);
    const { names, codes, columns } = groupColumns(complete.value.labels.group ?? [], orderInput(inputs.group_order));
    const at = names.length;
    const common = linearFit([...columns, x], y, undefined, level.value);
    if (common.rank <= at) return declined("no-spread", { column: "x" });
    const whole = sumOfSquares(y);
    if (!(whole > 0)) return declined("no-spread", { column: "y" });
    if (common.residualSumOfSquares <= 1e-24 * whole) return declined("perfect-fit", { column: "y" });
    const pooled = linearFit([ones(y.length), x], y);
    const within = slopesWithinGroups(x, y, codes, at);
    // A group whose x does not vary has no slope of its own to differ.
    const slopes = within.fits.filter((fit) => fit !== null).length;
    const [df1, df2] = [slopes - 1, y.length - at - slopes];
    const gain = Math.max(0, common.residualSumOfSquares - within.residualSumOfSquares) / df1;
    const F = df1 > 0 && df2 > 0 ? gain / (within.residualSumOfSquares / df2) : Number.NaN;
    const groupF = (pooled.residualSumOfSquares - common.residualSumOfSquares) / (at - 1) / common.sigma ** 2;
    const centre = mean(x);
    const places = names.map((_, g) => [...names.map((_, k) => (k === g ? 1 : 0)), centre]);
    const errors = places.map((place) => fitAt(common, place));
    const half = (common.high[at] as number) - (common.coefficients[at] as number);
    const multiple = half / (common.standardErrors[at] as number);
    return succeeded({
      pooled_slope: pooled.coefficients[1],
      common_slope: common.coefficients[at],
      se: common.standardErrors[at],
      t: common.t[at],
      p: common.p[at],
      df: common.degreesOfFreedom,
      ci95_low: common.low[at],
      ci95_high: common.high[at],
      within_slopes: plain(within.slopes),
      within_se: plain(within.standardErrors),
      F_interaction: Number.isFinite(F) ? F : null,
      df1_interaction: df1,
      df2_interaction: df2,
      p_interaction: Number.isFinite(F) ? fUpperTail(F, df1, df2) : null,
      F_group: groupF,
      p_group: fUpperTail(groupF, at - 1, common.degreesOfFreedom),
      adjusted_means: errors.map((place) => height + place.fit),
      adjusted_se: errors.map((place) => (place.meanHigh - place.fit) / multiple),
      sigma: common.sigma,
      reverses: (pooled.coefficients[1] as number) * (common.coefficients[at] as number) < 0,
    });
  },
};

import type { Method } from "../../base/index.ts";
import { declined, type MethodFields, type Outcome, succeeded } from "../../base/index.ts";
import { generatorFromSeed, normalQuantile } from "../../numerics/index.ts";
import { knownNumber } from "../inputs/known-number.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { type AskedResampling, askedResampling } from "../resampling/asked-resampling.ts";
import { accelerationOf, bcaLevels } from "../resampling/bca-levels.ts";
import { drawnFigures } from "../resampling/drawn-figures.ts";
import { type Draws, drawsFrom, drawsInputs } from "../resampling/draws-inputs.ts";
import { everyFigure, unlikeResamples } from "../resampling/every-figure.ts";
import {
  type FigureLaw,
  figureLaw,
  interpolatedOfLaw,
  inverseOfLaw,
  momentsOfLaw,
  resamplesOf,
  shareBelow,
} from "../resampling/figure-law.ts";
import { figureOf } from "../resampling/figure-of.ts";
import { leftOutOnce } from "../resampling/left-out-once.ts";
import { resampledStatistics } from "../resampling/resampled-statistics.ts";

/** Up to this many unlike resamples (10 records) all are taken; up to the second (12 records) where a run asks for all. */
const FEW = 100_000;
const MOST_UNLIKE = 1_500_000;
/** Records looked at in all, so that a run ends. */
const MOST_WORK = 2e9;
/** Figures that differ by less than this share of their range are ties that rounding has parted. */
const TIE = 1e-12;

type Resampled = {
  readonly law: FigureLaw;
  readonly estimate: number;
  readonly leftOut: Float64Array;
  readonly isAll: boolean;
};

function resampled(
  { units, statistic }: AskedResampling,
  { mode, draws, seed }: Draws,
  trim: number,
): Outcome<Resampled> {
  const unlike = unlikeResamples(units);
  const isAll = mode === "exact" || (mode === null && unlike <= FEW);
  if (isAll && unlike > MOST_UNLIKE)
    return declined("too-large", {
      name: "the number of records",
      most: "12 for every resample (6 in each of two groups)",
    });
  const records = units.values.length;
  if (!isAll && records * draws > MOST_WORK)
    return declined("too-large", { name: "draws times records", most: "two thousand million" });
  if ("fromValues" in statistic && records * units.count > MOST_WORK)
    return declined("too-large", { name: "the number of records", most: "about 40,000 for this figure" });
  const of = figureOf(units, statistic, trim);
  const estimate = of(new Int32Array(units.count).fill(1));
  if (!Number.isFinite(estimate)) return declined("no-spread", { column: "x" });
  const every = isAll ? everyFigure(units, of) : null;
  const law = every
    ? figureLaw(every.figures, every.weights)
    : figureLaw(drawnFigures(units, of, draws, generatorFromSeed(seed).split("bootstrap")), null);
  return succeeded({ law, estimate, leftOut: leftOutOnce(units, statistic, trim), isAll });
}

/** Estimate, spread and intervals of a law of resamples. shift: what is added to the figure in the end. */
function intervals(
  { law, estimate, leftOut }: Resampled,
  starts: Int32Array,
  level: number,
  shift: number,
): MethodFields {
  const { mean, sd } = momentsOfLaw(law);
  const range = (law.values.at(-1) ?? 0) - (law.values[0] ?? 0);
  const z0 = normalQuantile(shareBelow(law, estimate, TIE * range));
  const acceleration = accelerationOf(leftOut, starts, TIE * range);
  const bca = Number.isFinite(z0) ? bcaLevels(z0, acceleration, level) : { low: Number.NaN, high: Number.NaN };
  const hasBca = Number.isFinite(bca.low) && Number.isFinite(bca.high);
  const [low, high] = [(1 - level) / 2, (1 + level) / 2];
  const at = (p: number) => inverseOfLaw(law, p) + shift;
  const [percentile_low, percentile_high] = [at(low), at(high)];
  const [bca_low, bca_high] = hasBca ? [at(bca.low), at(bca.high)] : [null, null];
  return {
    estimate: estimate + shift,
    ci_low: bca_low ?? percentile_low,
    ci_high: bca_high ?? percentile_high,
    resamples: resamplesOf(law),
    dropped: law.dropped,
    se: sd,
    bias: mean - estimate,
    percentile_low,
    percentile_high,
    percentile_low_type7: interpolatedOfLaw(law, low) + shift,
    percentile_high_type7: interpolatedOfLaw(law, high) + shift,
    z0: knownNumber(z0),
    acceleration,
    level_low: knownNumber(bca.low),
    level_high: knownNumber(bca.high),
    bca_low,
    bca_high,
  };
}

/** An interval of a figure by drawing records again from themselves: BCa, with the plain percentile interval beside it. */
export const bootstrap: Method = {
  id: "bootstrap",
  name: "Bootstrap interval (BCa)",
  answers: "relation",
  needs: { rows: 3 },
  inputs: {
    x: { kind: "quantities", optional: true, meaning: "values, or the explaining quantity" },
    y: {
      kind: "quantities",
      optional: true,
      meaning: "explained quantity, for slope and correlation: records are drawn as pairs",
    },
    a: {
      kind: "quantities",
      optional: true,
      meaning: "values of the first group, in place of x; each group is drawn from itself",
    },
    b: { kind: "quantities", optional: true, meaning: "values of the second group" },
    cluster: { kind: "labels", optional: true, meaning: "what records share: whole clusters are drawn" },
    statistic: {
      kind: "choice",
      choices: Object.keys(resampledStatistics),
      optional: true,
      meaning:
        "the figure; unless given the mean of x, the slope where y is given, the difference of means of two groups",
    },
    trim: {
      kind: "number",
      optional: true,
      atLeast: 0,
      below: 0.5,
      meaning: "share left out at either end by trimmed-mean, 0.1 unless given",
    },
    level: levelInput,
    ...drawsInputs("resamples", "10 records or fewer"),
  },
  fields: {
    estimate: { meaning: "the figure of all records" },
    ci_low: { meaning: "lower limit to take: BCa, or percentile where BCa has none" },
    ci_high: { meaning: "upper limit to take" },
    resamples: { meaning: "resamples that have the figure" },
    dropped: { meaning: "resamples that do not have the figure, such as a slope without spread of x" },
    se: { meaning: "standard deviation of the figure over resamples (divided by their number)" },
    bias: { meaning: "mean over resamples less the estimate" },
    percentile_low: { meaning: "percentile interval (inverse of the distribution function), lower" },
    percentile_high: { meaning: "upper" },
    percentile_low_type7: { meaning: "the same with quantiles of type 7, lower" },
    percentile_high_type7: { meaning: "upper" },
    z0: {
      meaning: "correction for bias: normal quantile of the share of resamples below the estimate, ties counted half",
    },
    acceleration: { meaning: "correction for a spread that changes with the figure, from each record left out" },
    level_low: { meaning: "corrected level of the lower limit" },
    level_high: { meaning: "corrected level of the upper limit" },
    bca_low: { meaning: "BCa interval, lower; null where it has none" },
    bca_high: { meaning: "upper" },
    seed: { meaning: "seed of the draws; absent where every resample was taken" },
    set_aside: { meaning: "records without a value" },
    chosen: { meaning: "every resample or drawn ones, which interval, and why" },
  },
  source: {
    citation:
      "Efron (1987), JASA 82, 171-185; Efron and Tibshirani (1993), An Introduction to the Bootstrap, chapter 14",
    basis: "published",
  },
  run: (inputs) => {
    const [asked, level, draws] = [askedResampling(inputs), levelFrom(inputs), drawsFrom(inputs)];
    if (!asked.ok) return asked;
    if (!level.ok) return level;
    if (!draws.ok) return draws;
    const { trim = 0.1 } = inputs;
    if (typeof trim !== "number" || !(trim >= 0 && trim < 0.5))
      return declined("out-of-domain", { name: "trim", needed: "a share from 0 to below 0.5" });
    const made = resampled(asked.value, draws.value, trim);
    if (!made.ok) return made;
    const { law, estimate, isAll } = made.value;
    if (!(momentsOfLaw(law).sd > 1e-14 * Math.abs(estimate)))
      return declined("no-spread", { column: asked.value.statistic.meaning });
    const fields = intervals(made.value, asked.value.units.starts, level.value, asked.value.shift);
    const which = fields.bca_low === null ? "percentile interval, for BCa has none here" : "BCa interval";
    return succeeded({
      ...fields,
      set_aside: asked.value.setAside,
      ...(isAll ? {} : { seed: draws.value.seed }),
      chosen: isAll
        ? `every resample once, for there are few records; ${which}`
        : `${draws.value.draws} resamples drawn with seed ${draws.value.seed}; ${which}`,
    });
  },
};

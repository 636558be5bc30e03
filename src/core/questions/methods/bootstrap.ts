import type { Method, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { generatorFromSeed, quantileOfType } from "../../numerics/index.ts";
import { bcaLevels } from "../resampling/bca-levels.ts";
import { orderStatistic } from "../resampling/order-statistic.ts";
import { type ResampledStatistic, resampledStatistics } from "../resampling/resampled-statistic.ts";
import { drawnFigures, everyFigure, figureOfAll, leftOutOnce, type Units } from "../resampling/resampled-values.ts";
import { unitsOfRecords } from "../resampling/units-of-records.ts";
import { completeInputs } from "./complete-inputs.ts";
import { groupColumns } from "./group-columns.ts";
import { knownNumber } from "./known-number.ts";
import { levelFrom, levelInput } from "./level-input.ts";
import { numberInput } from "./number-input.ts";

const DRAWS = 10_000;
const SEED = 20260314;
/** Up to this many resamples all of them are taken, each once. */
const MOST_ENUMERATED = 1_000_000;
/** Records drawn in all, so that a run ends. */
const MOST_WORK = 2e9;

const isStatistic = (name: unknown): name is keyof typeof resampledStatistics =>
  typeof name === "string" && Object.hasOwn(resampledStatistics, name);

type Prepared = {
  readonly units: Units;
  readonly centre: number;
  readonly statistic: ResampledStatistic;
  readonly setAside: number;
};

/** The units to draw and the figure to take of them. */
function prepared(inputs: MethodInputs): Outcome<Prepared> {
  const name = inputs.statistic ?? (inputs.y === undefined ? "mean" : "slope");
  if (!isStatistic(name))
    return declined("out-of-domain", {
      name: "statistic",
      needed: `one of ${Object.keys(resampledStatistics).join(", ")}`,
    });
  const statistic: ResampledStatistic = resampledStatistics[name];
  const labels = inputs.cluster === undefined ? [] : ["cluster"];
  const complete = completeInputs(inputs, statistic.needsY ? ["x", "y"] : ["x"], labels, { rows: 3 });
  if (!complete.ok) return complete;
  const { x = new Float64Array(), y = new Float64Array(x.length) } = complete.value.arrays;
  const codes = labels.length > 0 ? groupColumns(complete.value.labels.cluster ?? []).codes : null;
  const { units, centre } = unitsOfRecords(x, y, codes);
  if (units.count < 3) return declined("too-few-records", { have: units.count, need: 3 });
  return succeeded({
    units,
    centre: statistic.shift === "x" ? centre : 0,
    statistic,
    setAside: complete.value.setAside,
  });
}

/** An interval of a figure by drawing records again from themselves: BCa, with the plain percentile interval beside it. */
export const bootstrap: Method = {
  id: "bootstrap",
  name: "Bootstrap interval (BCa)",
  answers: "relation",
  needs: { rows: 3 },
  inputs: {
    x: { kind: "quantities", meaning: "values, or the explaining quantity" },
    y: {
      kind: "quantities",
      optional: true,
      meaning: "explained quantity, for slope and correlation: records are drawn as pairs",
    },
    cluster: { kind: "labels", optional: true, meaning: "what records share: whole clusters are drawn" },
    statistic: {
      kind: "choice",
      choices: Object.keys(resampledStatistics),
      optional: true,
      meaning: "the figure; mean of x, or slope where y is given, unless given",
    },
    level: levelInput,
    draws: {
      kind: "number",
      atLeast: 100,
      atMost: 1_000_000,
      whole: true,
      optional: true,
      meaning: `resamples drawn, ${DRAWS} unless given`,
    },
    mode: {
      kind: "choice",
      choices: ["exact", "drawn"],
      optional: true,
      meaning: "every resample once, or drawn at random; exact where there are a million or fewer unless given",
    },
    seed: { kind: "number", optional: true, meaning: `seed of the draws, ${SEED} unless given` },
  },
  fields: {
    estimate: { meaning: "the figure of all records" },
    resamples: { meaning: "resamples that have the figure" },
    dropped: { meaning: "resamples that do not have the figure, such as a slope without spread of x" },
    se: { meaning: "standard deviation of the figure over resamples (divided by their number)" },
    bias: { meaning: "mean over resamples less the estimate" },
    percentile_low: { meaning: "percentile interval, lower" },
    percentile_high: { meaning: "upper" },
    percentile_low_type7: { meaning: "the same with quantiles of type 7, lower" },
    percentile_high_type7: { meaning: "upper" },
    z0: { meaning: "correction for bias" },
    acceleration: { meaning: "correction for a spread that changes with the figure" },
    level_low: { meaning: "corrected level of the lower limit" },
    level_high: { meaning: "corrected level of the upper limit" },
    bca_low: { meaning: "BCa interval, lower" },
    bca_high: { meaning: "upper" },
    seed: { meaning: "seed of the draws; absent where every resample was taken" },
    set_aside: { meaning: "records without a value" },
    chosen: { meaning: "every resample or drawn, and why" },
  },
  source: {
    citation: "Efron (1987), JASA 82, 171-185; Efron and Tibshirani (1993), An Introduction to the Bootstrap",
    basis: "published",
  },
  run: (inputs) => {
    const [ready, level] = [prepared(inputs), levelFrom(inputs)];
    if (!ready.ok) return ready;
    if (!level.ok) return level;
    const draws = numberInput(inputs, "draws", { above: 99, below: 1_000_001, otherwise: DRAWS });
    const seed = numberInput(inputs, "seed", { otherwise: SEED });
    if (!draws.ok) return draws;
    if (!seed.ok) return seed;
    const { units, centre, statistic, setAside } = ready.value;
    const isFew = units.count ** units.count <= MOST_ENUMERATED;
    if (inputs.mode === "exact" && !isFew)
      return declined("too-large", { name: "x", most: "7 records for every resample" });
    const all = isFew && inputs.mode !== "drawn";
    if (!all && units.values.length * draws.value > MOST_WORK)
      return declined("too-large", { name: "draws", most: "two thousand million records drawn in all" });
    const estimate = figureOfAll(units, statistic);
    if (!Number.isFinite(estimate)) return declined("no-spread", { column: "x" });
    const figures = all
      ? everyFigure(units, statistic)
      : drawnFigures(units, statistic, Math.round(draws.value), generatorFromSeed(seed.value).split("bootstrap"));
    const sorted = figures.filter(Number.isFinite).sort();
    const mean = sorted.reduce((sum, figure) => sum + figure / sorted.length, 0);
    const se = Math.sqrt(sorted.reduce((sum, figure) => sum + (figure - mean) ** 2 / sorted.length, 0));
    if (!(se > 1e-14 * Math.abs(estimate))) return declined("no-spread", { column: statistic.meaning });
    const bca = bcaLevels(sorted, estimate, leftOutOnce(units, statistic).filter(Number.isFinite), level.value);
    const [low, high] = [(1 - level.value) / 2, (1 + level.value) / 2];
    const at = (p: number) => (Number.isFinite(p) ? orderStatistic(sorted, p) + centre : null);
    return succeeded({
      estimate: estimate + centre,
      resamples: sorted.length,
      dropped: figures.length - sorted.length,
      se,
      bias: mean - estimate,
      percentile_low: at(low),
      percentile_high: at(high),
      percentile_low_type7: quantileOfType(sorted, low, 7) + centre,
      percentile_high_type7: quantileOfType(sorted, high, 7) + centre,
      z0: knownNumber(bca.z0),
      acceleration: bca.acceleration,
      level_low: knownNumber(bca.low),
      level_high: knownNumber(bca.high),
      bca_low: at(bca.low),
      bca_high: at(bca.high),
      set_aside: setAside,
      ...(all ? {} : { seed: seed.value }),
      chosen: all
        ? "every resample once: there are a million or fewer"
        : `${draws.value} resamples drawn with seed ${seed.value}: there are too many to take all`,
    });
  },
};

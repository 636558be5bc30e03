import {
  declined,
  type Method,
  type MethodFields,
  type MethodInputs,
  type Outcome,
  succeeded,
} from "../../base/index.ts";
import {
  choleskyFactor,
  covarianceOf,
  drawnInputs,
  firstOrderUncertainty,
  generatorFromSeed,
  summaryOfDraws,
} from "../../numerics/index.ts";
import { exactLaw, exactQuantile } from "./exact-law.ts";
import { correlatedPairs, isSimultaneous, knownCovariance } from "./known-covariance.ts";
import { type KnownInput, knownInputs } from "./known-inputs.ts";
import type { Model } from "./model.ts";
import { modelFromText } from "./model-from-text.ts";
import { modelOnDraws } from "./model-on-draws.ts";
import { taylorJet } from "./taylor-jet.ts";

const BLOCK = 4096;
const FEWEST = 100;
const MOST = 10_000_000;

type Asked = { readonly level: number; readonly draws: number; readonly seed: number; readonly isShortest: boolean };

function askedFrom(inputs: MethodInputs): Outcome<Asked> {
  const { level = 0.95, draws = 1_000_000, seed = 1, interval = "probabilistically symmetric" } = inputs;
  if (typeof level !== "number" || !(level > 0 && level < 1))
    return declined("out-of-domain", { name: "level", needed: "a number above 0 and below 1" });
  if (typeof draws !== "number" || !Number.isInteger(draws) || draws < FEWEST || draws > MOST)
    return declined("out-of-domain", { name: "draws", needed: `a whole number from ${FEWEST} to ${MOST}` });
  if (typeof seed !== "number" || !Number.isFinite(seed))
    return declined("out-of-domain", { name: "seed", needed: "a number" });
  if (interval !== "probabilistically symmetric" && interval !== "shortest")
    return declined("out-of-domain", { name: "interval", needed: '"probabilistically symmetric" or "shortest"' });
  return succeeded({ level, draws, seed, isShortest: interval === "shortest" });
}

/** Values of the model at joint draws of its inputs, and how the draws were spread. */
function drawnValues(model: Model, known: readonly KnownInput[], factor: Float64Array | null, { draws, seed }: Asked) {
  const laws = known.map(({ law }) => law);
  const inputs = laws.map(() => new Float64Array(BLOCK));
  const source = drawnInputs(laws, factor, generatorFromSeed(seed).split("monte-carlo-uncertainty"), BLOCK);
  const evaluate = modelOnDraws(model, BLOCK);
  const values = new Float64Array(draws);
  for (let from = 0; from < draws; from += BLOCK) {
    const count = Math.min(BLOCK, draws - from);
    source.next(inputs, count);
    evaluate(inputs, count, values, from);
  }
  return { values, spread: source.spread };
}

/** First-order estimate for comparison, and the exact limits where the law is known. */
function closedForms(
  model: Model,
  known: readonly KnownInput[],
  covariance: Float64Array,
  asked: Asked,
  isIndependent: boolean,
): MethodFields {
  const jet = taylorJet(
    model,
    known.map(({ law }) => law.mean),
  );
  const first = firstOrderUncertainty(jet.gradient, covariance).standard;
  const isKnown = Number.isFinite(first) && Number.isFinite(jet.value);
  const law = isKnown && first > 0 ? exactLaw(model, known, covariance, isIndependent) : null;
  const at = (p: number) => (law ? exactQuantile(law, p, jet.value, first) : null);
  return {
    first_order_value: Number.isFinite(jet.value) ? jet.value : null,
    first_order_u: isKnown ? first : null,
    exact_low: asked.isShortest ? null : at((1 - asked.level) / 2),
    exact_high: asked.isShortest ? null : at((1 + asked.level) / 2),
    exact_median: at(0.5),
    exact_way: law?.way ?? null,
  };
}

function simulated(
  model: Model,
  known: readonly KnownInput[],
  inputs: MethodInputs,
  asked: Asked,
): Outcome<MethodFields> {
  const names = model.inputs;
  const pairs = correlatedPairs(inputs.correlations, names);
  if (!pairs.ok) return pairs;
  const together = isSimultaneous(known) && inputs.simultaneous !== false;
  const crooked = pairs.value
    .flatMap(({ first, second }) => [first, second])
    .find((at) => known[at]?.law.law !== "normal");
  if (crooked !== undefined)
    return declined("out-of-domain", {
      name: `law of ${names[crooked]}`,
      needed: "the normal law where inputs are correlated",
    });
  const covariance = knownCovariance(known, pairs.value, together);
  if (!covariance.ok) return covariance;
  const isIndependent = pairs.value.length === 0 && !together;
  const n = names.length;
  const sizes = known.map(({ uncertainty }) => uncertainty);
  const scaled = together
    ? covariance.value.map((one, at) => {
        const scale = (sizes[Math.floor(at / n)] as number) * (sizes[at % n] as number);
        return Math.floor(at / n) === at % n ? 1 : scale > 0 ? one / scale : 0;
      })
    : covarianceOf(new Float64Array(n).fill(1), pairs.value);
  const factor = isIndependent ? null : choleskyFactor(scaled);
  if (!isIndependent && !factor) return declined("contradicting-correlations", {});
  const { values, spread } = drawnValues(model, known, factor, asked);
  if (!values.every(Number.isFinite)) return declined("not-finite", { name: model.name || "the result of some draws" });
  const summary = summaryOfDraws(values, asked.level);
  return succeeded({
    name: model.name,
    mean: summary.mean,
    u: summary.standard,
    median: summary.median,
    low: asked.isShortest ? summary.shortestLow : summary.low,
    high: asked.isShortest ? summary.shortestHigh : summary.high,
    ...closedForms(model, known, covariance.value, asked, isIndependent),
    inputs: names,
    draws: asked.draws,
    seed: asked.seed,
    chosen: `${spread}, seed ${asked.seed}; ${asked.isShortest ? "shortest interval" : "as much left out on either side"}`,
  });
}

/** The law of a result by drawing its inputs: Monte Carlo propagation of distributions, with the exact limits where there are any. */
export const monteCarloUncertainty: Method = {
  id: "monte-carlo-uncertainty",
  name: "Uncertainty of a result by Monte Carlo",
  answers: "uncertainty",
  needs: {},
  inputs: {
    model: { kind: "text", meaning: "formula of one result, as in a / b" },
    inputs: {
      kind: "table",
      meaning:
        "its inputs, each {name, value or mean, law, u or sd}; law: normal, rectangular, triangular, u-shaped (half_width, or low and high, will do) or t (df; scale or u); or readings",
    },
    correlations: {
      kind: "table",
      optional: true,
      meaning: "pairs of normal inputs: {between: [name, name], coefficient}",
    },
    simultaneous: { kind: "yes-no", optional: true, meaning: "whether readings were taken together; see gum" },
    level: { kind: "number", optional: true, meaning: "level of the interval, 0.95" },
    interval: {
      kind: "choice",
      choices: ["probabilistically symmetric", "shortest"],
      optional: true,
      meaning: "which interval of the level",
    },
    draws: { kind: "number", optional: true, meaning: "draws, 1,000,000" },
    seed: { kind: "number", optional: true, meaning: "seed of the draws, 1" },
  },
  fields: {
    name: { meaning: "name of the result" },
    mean: { meaning: "mean of the result" },
    u: { meaning: "its standard deviation" },
    median: { meaning: "its median" },
    low: { meaning: "lower end of the interval" },
    high: { meaning: "upper end" },
    first_order_value: { meaning: "the model at the estimates of its inputs" },
    first_order_u: { meaning: "standard uncertainty by first-order propagation, for comparison" },
    exact_low: { meaning: "lower end by the exact law, where it is known" },
    exact_high: { meaning: "upper end by the exact law" },
    exact_median: { meaning: "median by the exact law" },
    exact_way: { meaning: "how the exact law was computed" },
    inputs: { meaning: "names of the inputs, in order" },
    draws: { meaning: "draws made" },
    seed: { meaning: "seed of the draws" },
    chosen: { meaning: "how the draws were spread and which interval it is" },
  },
  source: { citation: "JCGM 101:2008, clauses 5 to 7 and 9", basis: "published" },
  run: (inputs) => {
    if (typeof inputs.model !== "string")
      return declined("out-of-domain", { name: "model", needed: "a formula as text" });
    const asked = askedFrom(inputs);
    if (!asked.ok) return asked;
    const models = modelFromText(inputs.model);
    if (!models.ok) return models;
    const [model, another] = models.value;
    if (!model || another) return declined("out-of-domain", { name: "model", needed: "one result at a time" });
    const known = knownInputs(inputs.inputs, model.inputs);
    if (!known.ok) return known;
    if (known.value.length === 0) return declined("out-of-domain", { name: "model", needed: "at least one input" });
    return simulated(model, known.value, inputs, asked.value);
  },
};

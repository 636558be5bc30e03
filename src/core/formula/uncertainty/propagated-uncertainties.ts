import {
  declined,
  type Method,
  type MethodFields,
  type MethodInputs,
  type Outcome,
  succeeded,
} from "../../base/index.ts";
import {
  type Correlated,
  choleskyFactor,
  covarianceOf,
  drawnInputs,
  firstOrderUncertainty,
  generatorFromSeed,
  secondOrderTerm,
  summaryOfDraws,
} from "../../numerics/index.ts";
import { correlatedPairs } from "./known-covariance.ts";
import { type Evaluation, numericJet } from "./numeric-jet.ts";
import type { Jet } from "./taylor-jet.ts";

/** Standard uncertainty of one field of an answer, how it was found, and which input carries how much of it. */
export type PropagatedUncertainty = {
  readonly standard: number | null;
  readonly chosen: "first-order" | "Monte Carlo";
  readonly why: string;
  /** Share of the first-order variance by input; with correlations they need not add up to one. */
  readonly shares: Readonly<Record<string, number>>;
  /** Second-order variance over first-order variance. */
  readonly curvature: number | null;
  /** 95 % interval and mean of the draws, where there were any. */
  readonly low?: number;
  readonly high?: number;
  readonly mean?: number;
};

/** By field; of a list, one for each item. */
export type PropagatedFields = Readonly<Record<string, PropagatedUncertainty | readonly PropagatedUncertainty[]>>;

/** Above this share of the variance a model is strongly curved. */
const CURVED = 0.05;
const DRAWS = 2048;
const FEWEST = 0.99;
const SEED = 1;

/** A number of a list has a name of its own while it is followed: its field and its place. */
const PLACE = "#";

/** The finite quantities of an answer (fields whose record states a dimension; counts and marks have none), and items of lists of them. */
function numbersOf(method: Method, fields: MethodFields): Readonly<Record<string, number>> {
  const numbers: Record<string, number> = {};
  for (const [field, value] of Object.entries(fields)) {
    if (method.fields[field]?.dimension === undefined) continue;
    if (typeof value === "number" && Number.isFinite(value)) numbers[field] = value;
    const list = value instanceof Float64Array ? Array.from(value) : Array.isArray(value) ? value : [];
    if (list.every((one): one is number => typeof one === "number" && Number.isFinite(one)))
      for (const [at, one] of list.entries()) numbers[`${field}${PLACE}${at}`] = one;
  }
  return numbers;
}

/** Numbers of a run with some inputs put at a place; null where it is declined. */
function evaluationOf(method: Method, inputs: MethodInputs, names: readonly string[]): Evaluation {
  return (place) => {
    const made = method.run({ ...inputs, ...Object.fromEntries(names.map((name, i) => [name, place[i]])) });
    return made.ok ? numbersOf(method, made.value) : null;
  };
}

/** One entry a field: a list of them where the field is a list. */
function byField(entries: readonly (readonly [string, PropagatedUncertainty])[]): PropagatedFields {
  const made: Record<string, PropagatedUncertainty | readonly PropagatedUncertainty[]> = {};
  for (const [name, one] of entries) {
    const [field = "", place] = name.split(PLACE);
    const before = made[field];
    made[field] =
      place === undefined ? one : [...(Array.isArray(before) ? (before as readonly PropagatedUncertainty[]) : []), one];
  }
  return made;
}

type Drawn = { readonly at: (field: string) => Float64Array };

/** Fields at joint draws of normal inputs; a place that is declined is left out. */
function drawnFields(
  evaluate: Evaluation,
  place: readonly number[],
  sizes: readonly number[],
  factor: Float64Array | null,
): Drawn {
  const laws = place.map((mean, i) => ({ law: "normal", mean, sd: sizes[i] as number }) as const);
  const lists = laws.map(() => new Float64Array(DRAWS));
  drawnInputs(laws, factor, generatorFromSeed(SEED).split("propagated-uncertainties"), DRAWS).next(lists, DRAWS);
  const seen = Array.from({ length: DRAWS }, (_, k) => evaluate(lists.map((list) => list[k] as number)));
  return { at: (field) => Float64Array.from(seen.flatMap((one) => one?.[field] ?? [])) };
}

function fieldUncertainty(
  field: string,
  jet: Jet,
  names: readonly string[],
  covariance: Float64Array,
  drawn: () => Drawn,
): PropagatedUncertainty {
  const first = firstOrderUncertainty(jet.gradient, covariance);
  const second = secondOrderTerm(jet.hessian, covariance).variance;
  const ratio = first.standard > 0 ? second / first.standard ** 2 : second > 0 ? Number.POSITIVE_INFINITY : 0;
  const shares = Object.fromEntries(names.map((name, i) => [name, first.shares[i] ?? 0]));
  const curvature = Number.isFinite(ratio) ? ratio : null;
  if (Number.isFinite(first.standard) && ratio <= CURVED) {
    const why = "curvature adds no more than a twentieth to the variance";
    return { standard: first.standard, chosen: "first-order", why, shares, curvature };
  }
  const values = drawn().at(field);
  if (values.length < FEWEST * DRAWS) {
    const why = "withheld: within these uncertainties the inputs leave what the formula is good for";
    return { standard: null, chosen: "Monte Carlo", why, shares, curvature };
  }
  const { standard, low, high, mean } = summaryOfDraws(values, 0.95);
  const why = `the model is strongly curved within the uncertainty of its inputs; ${values.length} draws, seed ${SEED}`;
  return { standard, chosen: "Monte Carlo", why, shares, curvature, low, high, mean };
}

/**
 * Standard uncertainty of every quantity in a method's answer from those of its inputs: first order with correlations (JCGM 100, equation 13), Monte
 * Carlo where curvature adds more than a twentieth to the variance.
 * method: any; inputs: as `run` takes them; uncertainties: standard, in the unit of the input, by its name; correlations: {between, coefficient} by
 * name. Declines a negative uncertainty, one of an input that is no single number, and correlations that contradict one another.
 * Source: JCGM 100:2008, 5.1 and 5.2; JCGM 101:2008, clause 7.
 */
export function propagatedUncertainties(
  method: Method,
  inputs: MethodInputs,
  uncertainties: Readonly<Record<string, number>>,
  correlations?: unknown,
): Outcome<PropagatedFields> {
  for (const [name, u] of Object.entries(uncertainties)) {
    if (u < 0) return declined("negative-uncertainty", { name });
    if (!Number.isFinite(u) || typeof inputs[name] !== "number")
      return declined("out-of-domain", {
        name: `uncertainty of ${name}`,
        needed: "a number, for an input that is one number",
      });
  }
  const stated = Object.keys(uncertainties);
  const pairs = correlatedPairs(correlations, stated);
  if (!pairs.ok) return pairs;
  const names = stated.filter((name) => (uncertainties[name] as number) > 0);
  const place = names.map((name) => inputs[name] as number);
  const sizes = names.map((name) => uncertainties[name] as number);
  const correlated = pairs.value.flatMap(({ first, second, coefficient }): Correlated[] => {
    const [one, other] = [names.indexOf(stated[first] as string), names.indexOf(stated[second] as string)];
    return one < 0 || other < 0 ? [] : [{ first: one, second: other, coefficient }];
  });
  const factor = choleskyFactor(covarianceOf(new Float64Array(names.length).fill(1), correlated));
  if (!factor) return declined("contradicting-correlations", {});
  const evaluate = evaluationOf(method, inputs, names);
  const jets = numericJet(evaluate, place, sizes);
  if (!jets) return declined("not-finite", { name: "the result" });
  const covariance = covarianceOf(sizes, correlated);
  let draws: Drawn | null = null;
  const drawn = (): Drawn => {
    draws ??= drawnFields(evaluate, place, sizes, correlated.length > 0 ? factor : null);
    return draws;
  };
  return succeeded(
    byField(
      Object.entries(jets).map(
        ([field, jet]) => [field, fieldUncertainty(field, jet, names, covariance, drawn)] as const,
      ),
    ),
  );
}

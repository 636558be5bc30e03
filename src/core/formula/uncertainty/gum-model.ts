import { declined, type MethodFields, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import {
  effectiveDegreesOfFreedom,
  firstOrderUncertainty,
  propagatedCovariance,
  secondOrderTerm,
} from "../../numerics/index.ts";
import { type Coverage, coverageFields } from "./coverage-fields.ts";
import { correlatedPairs, isSimultaneous, knownCovariance } from "./known-covariance.ts";
import { type KnownInput, knownInputs } from "./known-inputs.ts";
import type { Model } from "./model.ts";
import { modelFromText } from "./model-from-text.ts";
import { type Jet, taylorJet } from "./taylor-jet.ts";

/** Beyond this share of the first-order variance the curvature is said to matter. */
const CURVED = 0.05;

type Budget = { readonly known: readonly KnownInput[]; readonly covariance: Float64Array; readonly together: boolean };

const isFiniteJet = ({ value, gradient }: Jet, known: readonly KnownInput[]): boolean =>
  Number.isFinite(value) && gradient.every((one, i) => Number.isFinite(one) || known[i]?.uncertainty === 0);

/** Degrees of freedom of a result: of the readings where all were taken together, Welch-Satterthwaite where inputs are independent, else unknown. */
function degreesOf({ known, covariance, together }: Budget, gradient: Float64Array): number | null {
  const n = known.length;
  if (together) return known[0]?.degreesOfFreedom ?? null;
  const isIndependent = covariance.every((one, at) => one === 0 || Math.floor(at / n) === at % n);
  const isCertain = known.every(({ degreesOfFreedom }) => degreesOfFreedom === Number.POSITIVE_INFINITY);
  if (!isIndependent && !isCertain) return null;
  return effectiveDegreesOfFreedom(
    known.map(({ uncertainty }, i) => (gradient[i] as number) * uncertainty),
    known.map(({ degreesOfFreedom }) => degreesOfFreedom),
  );
}

function resultFields(model: Model, jet: Jet, budget: Budget, coverage: Coverage): MethodFields {
  const { known, covariance } = budget;
  const sensitivity = jet.gradient.map((one, i) => (known[i]?.uncertainty === 0 && !Number.isFinite(one) ? 0 : one));
  const first = firstOrderUncertainty(sensitivity, covariance);
  const ignoring = firstOrderUncertainty(
    sensitivity,
    covariance.map((one, at) => (Math.floor(at / known.length) === at % known.length ? one : 0)),
  );
  const second = secondOrderTerm(jet.hessian, covariance);
  const curvature = first.standard > 0 ? second.variance / first.standard ** 2 : second.variance > 0 ? null : 0;
  const df = degreesOf(budget, sensitivity);
  return {
    name: model.name,
    value: jet.value,
    u: first.standard,
    relative_u: jet.value === 0 ? null : first.standard / Math.abs(jet.value),
    share: first.shares,
    correlation_share: first.correlationShare,
    sensitivity: Array.from(sensitivity),
    u_ignoring_correlation: ignoring.standard,
    second_order_shift: Number.isFinite(second.shift) ? second.shift : null,
    second_order_u: Number.isFinite(second.variance) ? Math.sqrt(second.variance + first.standard ** 2) : null,
    curvature: curvature !== null && Number.isFinite(curvature) ? curvature : null,
    chosen:
      curvature !== null && curvature <= CURVED
        ? "first order: curvature adds little to the variance"
        : "first order, but the model is strongly curved: the Monte Carlo interval is to be preferred",
    ...(df === null ? {} : coverageFields(first.standard, df, coverage)),
  };
}

function budgetFrom(inputs: MethodInputs, names: readonly string[]): Outcome<Budget> {
  const known = knownInputs(inputs.inputs, names);
  if (!known.ok) return known;
  const infinite = known.value.find(({ uncertainty }) => !Number.isFinite(uncertainty));
  if (infinite)
    return declined("out-of-domain", {
      name: `uncertainty of ${infinite.name}`,
      needed: "a law with a standard deviation",
    });
  const pairs = correlatedPairs(inputs.correlations, names);
  if (!pairs.ok) return pairs;
  const together = isSimultaneous(known.value) && inputs.simultaneous !== false;
  const covariance = knownCovariance(known.value, pairs.value, together);
  return covariance.ok ? succeeded({ known: known.value, covariance: covariance.value, together }) : covariance;
}

/** Coefficient of each pair, by names. */
function coefficients(covariance: Float64Array, names: readonly string[]) {
  const n = names.length;
  return names.flatMap((second, j) =>
    names.slice(0, j).map((first, i) => {
      const scale = Math.sqrt((covariance[i * n + i] as number) * (covariance[j * n + j] as number));
      const coefficient = scale > 0 ? Math.max(-1, Math.min(1, (covariance[i * n + j] as number) / scale)) : null;
      return { between: [first, second], coefficient };
    }),
  );
}

/** The result of a model, or of several at once with their correlations: JCGM 100, equations 10 and 13, with exact derivatives. */
export function gumModel(text: string, inputs: MethodInputs, coverage: Coverage): Outcome<MethodFields> {
  const models = modelFromText(text);
  if (!models.ok) return models;
  const names = models.value.at(-1)?.inputs ?? [];
  const budget = budgetFrom(inputs, names);
  if (!budget.ok) return budget;
  const { known, covariance } = budget.value;
  const place = known.map(({ law }) => law.mean);
  const jets = models.value.map((model) => taylorJet(model, place));
  const bad = jets.findIndex((jet) => !isFiniteJet(jet, known));
  if (bad >= 0) return declined("not-finite", { name: models.value[bad]?.name || "the result" });
  const results = jets.map((jet, at) => resultFields(models.value[at] as Model, jet, budget.value, coverage));
  const shared = propagatedCovariance(
    jets.map(({ gradient }) => gradient.map((one) => (Number.isFinite(one) ? one : 0))),
    covariance,
  );
  return succeeded({
    ...results[0],
    inputs: names,
    input_values: place,
    input_u: known.map(({ uncertainty }) => uncertainty),
    input_correlations: coefficients(covariance, names),
    ...(results.length > 1
      ? {
          results,
          correlations: coefficients(
            shared,
            models.value.map(({ name }) => name),
          ),
        }
      : {}),
  });
}

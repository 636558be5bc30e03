import { declined, type MethodFields, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { effectiveDegreesOfFreedom, firstOrderUncertainty } from "../../numerics/index.ts";
import { type Coverage, coverageFields } from "./coverage-fields.ts";

const listOf = (value: unknown): readonly number[] | null =>
  value instanceof Float64Array
    ? Array.from(value)
    : Array.isArray(value)
      ? value.map((one: unknown) => (typeof one === "number" ? one : Number.NaN))
      : typeof value === "number"
        ? [value]
        : null;

/** A budget of components in the unit of the result: root sum of squares, effective degrees of freedom, expanded uncertainty. */
export function gumBudget(inputs: MethodInputs, coverage: Coverage): Outcome<MethodFields> {
  const components = listOf(inputs.component_u) ?? [];
  const n = components.length;
  if (n === 0) return declined("too-few-records", { have: 0, need: 1 });
  const sensitivity = listOf(inputs.component_sensitivity) ?? components.map(() => 1);
  const given = listOf(inputs.component_df) ?? components.map(() => Number.NaN);
  for (const [name, list] of [
    ["component_sensitivity", sensitivity],
    ["component_df", given],
  ] as const)
    if (list.length !== n) return declined("out-of-domain", { name, needed: `a list of ${n}, one a component` });
  const at = components.findIndex((one, i) => !Number.isFinite(one) || !Number.isFinite(sensitivity[i]));
  if (at >= 0) return declined("not-finite", { name: `component ${at + 1}` });
  const negative = components.findIndex((one) => one < 0);
  if (negative >= 0) return declined("negative-uncertainty", { name: `component ${negative + 1}` });
  const degrees = given.map((one) => (Number.isNaN(one) ? Number.POSITIVE_INFINITY : one));
  const few = degrees.findIndex((one) => !(one > 0));
  if (few >= 0) return declined("out-of-domain", { name: `df of component ${few + 1}`, needed: "a number above zero" });
  const covariance = new Float64Array(n * n);
  for (const [i, one] of components.entries()) covariance[i * n + i] = one ** 2;
  const { standard, shares } = firstOrderUncertainty(sensitivity, covariance);
  if (!Number.isFinite(standard)) return declined("not-finite", { name: "u" });
  const parts = components.map((one, i) => Math.abs(one * (sensitivity[i] as number)));
  const estimate = typeof inputs.estimate === "number" ? inputs.estimate : null;
  return succeeded({
    value: estimate,
    u: standard,
    u_c: standard,
    relative_u: estimate === null || estimate === 0 ? null : standard / Math.abs(estimate),
    share: shares,
    sensitivity,
    ...coverageFields(standard, effectiveDegreesOfFreedom(parts, degrees), coverage),
    chosen: coverage.isTruncated
      ? "root sum of squares; effective degrees of freedom cut to the whole number below before k is taken"
      : "root sum of squares; effective degrees of freedom used as they are",
  });
}

import type { QuantityColumn } from "../../columns/index.ts";
import { linearFit } from "../fits/linear-fit.ts";
import { sampled } from "../sample-from-columns.ts";
import type { RelationDesign } from "./relation-design.ts";

/** How much of the spread of x (given the rest of the design) is measurement error, 0 to 1 or more: the share by which it flattens the slope. */
export type FlattenedSlope = {
  readonly share: number;
  /** The spread of x that the rest of the design leaves, squared. */
  readonly variance: number;
};

/**
 * share = mean(u^2) / s^2, s^2 the residual variance of x on the other columns (its variance within groups where there are groups).
 * In logarithms u is relative. Records without an uncertainty take the mean of the others. null when no uncertainty is known.
 * Source: W. A. Fuller (1987), Measurement Error Models, section 1.1.1 (reliability ratio 1 - share).
 */
export function flattenedSlope(
  column: QuantityColumn,
  design: RelationDesign,
  which: number,
  logarithmic: boolean,
): FlattenedSlope | null {
  if (!column.uncertainty) return null;
  const values = sampled(column.values, design.sample);
  const relative = sampled(column.uncertainty, design.sample).map((u, i) =>
    logarithmic ? u / (values[i] as number) : u,
  );
  const known = relative.filter((u) => Number.isFinite(u) && u >= 0);
  if (known.length === 0) return null;
  const errorVariance = known.reduce((sum, u) => sum + u * u, 0) / known.length;
  const place = design.slopes[which] as number;
  const rest = linearFit(
    design.columns.filter((_, j) => j !== place),
    design.x[which] as Float64Array,
  );
  const variance = rest.sigma ** 2;
  return errorVariance > 0 && variance > 0 ? { share: errorVariance / variance, variance } : null;
}

import type { Method } from "../../base/index.ts";
import { tQuantile } from "../../numerics/index.ts";
import { askedByName } from "../asked-by-name.ts";
import { clusterErrors } from "../fits/cluster-errors.ts";
import type { LinearFit } from "../fits/linear-fit.ts";
import { robustErrors } from "../fits/robust-errors.ts";
import { clusterRobust } from "../methods/cluster-robust.ts";
import { ordinaryLeastSquares } from "../methods/ordinary-least-squares.ts";
import { robustLeastSquares } from "../methods/robust-least-squares.ts";
import type { SharedClusters } from "../shared-clusters.ts";

/** Standard errors and degrees of freedom of every coefficient, the method they come from and why it was chosen. */
export type SlopeInterval = {
  readonly method: Method;
  readonly because: string;
  readonly standardErrors: Float64Array;
  readonly degreesOfFreedom: Float64Array;
};

/** What an interval that a question names cannot do without. */
export const INTERVAL_NEEDS = {
  "cluster-robust": "a table that says what its pieces share, and pieces of several such groups",
  "robust-se": "more records than columns, none of which decides its own fitted value",
} as const;

const usable = (interval: SlopeInterval, at: readonly number[]): boolean =>
  at.every(
    (j) =>
      Number.isFinite(interval.standardErrors[j]) &&
      (interval.standardErrors[j] ?? 0) > 0 &&
      (interval.degreesOfFreedom[j] ?? 0) > 0.5,
  );

const plainInterval = (fit: LinearFit, because: string): SlopeInterval => ({
  method: ordinaryLeastSquares,
  because,
  standardErrors: fit.standardErrors,
  degreesOfFreedom: fit.standardErrors.map(() => fit.degreesOfFreedom),
});

/**
 * Which interval the slopes get: pieces that share something -> CR2; else scatter that changes along x -> HC3; else the usual t interval.
 * `by` ("ols", "robust-se", "cluster-robust") overrules. slopes: places of the slopes in the fit.
 */
export function slopeInterval(
  fit: LinearFit,
  slopes: readonly number[],
  shared: SharedClusters | null,
  spreadP: number,
  by: string | null,
): SlopeInterval {
  const ready = by === "ancova" || by === "power-law" || by === "ols-multiple" || by === "ols";
  if (ready) return plainInterval(fit, askedByName);
  if (shared && by !== "robust-se") {
    const errors = clusterErrors(fit, shared.codes, shared.clusters);
    const because =
      by === null ? `pieces that share a ${shared.column.replaceAll("_", " ")} are not separate evidence` : askedByName;
    const interval = {
      method: clusterRobust,
      because,
      standardErrors: errors.cr2,
      degreesOfFreedom: errors.degreesOfFreedom,
    };
    if (usable(interval, slopes)) return interval;
  }
  if (by === "robust-se" || (by === null && spreadP < 0.05)) {
    const interval = {
      ...plainInterval(fit, by === null ? "the scatter changes along the explaining column" : askedByName),
      method: robustLeastSquares,
      standardErrors: robustErrors(fit, "hc3"),
    };
    if (usable(interval, slopes)) return interval;
  }
  return plainInterval(fit, "the scatter is even and the records are separate pieces");
}

/** Half the width of the 95 % interval of one coefficient. */
export const halfWidth = (interval: SlopeInterval, at: number): number =>
  (interval.standardErrors[at] ?? Number.NaN) * tQuantile(0.975, interval.degreesOfFreedom[at] ?? Number.NaN);

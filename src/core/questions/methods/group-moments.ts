import { mean, sumOfSquares } from "../../numerics/index.ts";

/** Count, mean and variance of each group; variance NaN for a group of one. */
export type GroupMoments = { readonly values: readonly Float64Array[]; readonly counts: readonly number[]; readonly means: readonly number[]; readonly variances: readonly number[] };

/** The moments of y by group. codes: group of each record, 0 … groups - 1; every group has at least one record. */
export function groupMoments(y: Float64Array, codes: Int32Array, groups: number): GroupMoments {
  const values = Array.from({ length: groups }, (_, group) => y.filter((_, i) => codes[i] === group));
  return {
    values,
    counts: values.map((own) => own.length),
    means: values.map(mean),
    variances: values.map((own) => (own.length > 1 ? sumOfSquares(own) / (own.length - 1) : Number.NaN)),
  };
}

import { mean, sumOfSquares } from "../../numerics/index.ts";

/** Count, mean and variance of each group; variance NaN for a group of one. */
export type GroupMoments = {
  readonly values: readonly Float64Array[];
  readonly counts: readonly number[];
  readonly means: readonly number[];
  readonly variances: readonly number[];
};

/** The moments of y by group. codes: group of each record, 0 … groups - 1; every group has at least one record. */
export function groupMoments(y: Float64Array, codes: Int32Array, groups: number): GroupMoments {
  const lists = Array.from({ length: groups }, (): number[] => []);
  for (const [i, code] of codes.entries()) lists[code]?.push(y[i] as number);
  const values = lists.map((list) => Float64Array.from(list));
  return {
    values,
    counts: values.map((own) => own.length),
    means: values.map(mean),
    variances: values.map((own) => (own.length > 1 ? sumOfSquares(own) / (own.length - 1) : Number.NaN)),
  };
}

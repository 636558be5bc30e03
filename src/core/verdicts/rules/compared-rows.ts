import type { RowRef, SetAside } from "../../base/index.ts";
import type { QuantityColumn } from "../../columns/index.ts";
import { sampled, sampleFromColumns } from "../../questions/index.ts";
import type { RuleInput } from "./rule-input.ts";

/** Differences a − b over the rows that take part, in SI, with the rows used and set aside. */
export function comparedRows(
  a: QuantityColumn,
  b: QuantityColumn,
  { table, mask }: RuleInput,
): { readonly differences: Float64Array; readonly used: readonly RowRef[]; readonly setAside: readonly SetAside[] } {
  const sample = sampleFromColumns(table, [a, b], mask);
  const second = sampled(b.values, sample);
  const differences = sampled(a.values, sample).map((value, at) => value - (second[at] ?? Number.NaN));
  return { differences, used: sample.rows, setAside: sample.setAside };
}

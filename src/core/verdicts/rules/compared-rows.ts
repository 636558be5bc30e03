import type { RowRef, SetAside } from "../../base/index.ts";
import type { QuantityColumn } from "../../columns/index.ts";
import type { RuleInput } from "./rule-input.ts";

/** Differences a − b over the rows that take part, in SI, with the rows used and set aside. */
export function comparedRows(
  a: QuantityColumn,
  b: QuantityColumn,
  { table, mask }: RuleInput,
): { readonly differences: Float64Array; readonly used: readonly RowRef[]; readonly setAside: readonly SetAside[] } {
  const differences: number[] = [];
  const used: RowRef[] = [];
  const setAside: SetAside[] = [];
  for (let row = 0; row < table.rowCount; row++) {
    const ref = table.rows[row];
    if (mask[row] !== 1 || !ref) continue;
    const left = table.leftOut.get(row);
    const difference = (a.values[row] ?? Number.NaN) - (b.values[row] ?? Number.NaN);
    if (left !== undefined) setAside.push({ row: ref, why: left });
    else if (!Number.isFinite(difference)) setAside.push({ row: ref, why: "missing" });
    else {
      differences.push(difference);
      used.push(ref);
    }
  }
  return { differences: Float64Array.from(differences), used, setAside };
}

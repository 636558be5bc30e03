import type { ColumnTable } from "../columns/index.ts";
import type { Sample } from "./sample-from-columns.ts";

/** What the sample's pieces share: the column, a code for each record, the number of clusters. A piece with no entry stands alone. */
export type SharedClusters = { readonly column: string; readonly codes: Int32Array; readonly clusters: number };

/** The clusters of the table's `pieces share` column; null when none is said, or when no two pieces of the sample share anything. */
export function sharedClusters(table: ColumnTable, sample: Sample): SharedClusters | null {
  const column = table.shared === undefined ? undefined : table.columns.get(table.shared);
  if (!column || (column.kind !== "label" && column.kind !== "grade")) return null;
  const place = new Map<number, number>();
  let clusters = 0;
  const codes = Int32Array.from(sample.index, (row) => {
    const code = column.codes[row] ?? -1;
    if (code < 0) return clusters++;
    const known = place.get(code);
    if (known !== undefined) return known;
    place.set(code, clusters);
    return clusters++;
  });
  return clusters < codes.length ? { column: column.name, codes, clusters } : null;
}

import type { Contribution, QuantityColumn } from "../../columns/index.ts";

/** What each source adds to the error of a column, by record; a measured column has its own uncertainty. Errors that are one for all rows move no slope and are left out. */
export function errorsOf({
  name,
  origin,
  uncertainty,
  contributions,
}: QuantityColumn): ReadonlyMap<string, Contribution> {
  if (origin.from === "file" && uncertainty) return new Map([[name, { values: uncertainty, shared: false }]]);
  return new Map([...(contributions ?? [])].filter(([, { shared }]) => !shared));
}

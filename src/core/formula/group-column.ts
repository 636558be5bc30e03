// A group function over a whole table: one result a group, at every row of the group.
import type { Contribution } from "../columns/index.ts";
import type { NumberColumn } from "./formula-inputs.ts";
import type { GroupFunction } from "./group-function.ts";

type Group = { readonly members: readonly number[]; readonly incomplete: boolean };

/** The rows of each group that take part and have a value. */
function groupsOf(
  of: Float64Array,
  by: Float64Array | null,
  leftOut: { readonly has: (row: number) => boolean },
): ReadonlyMap<number, Group> {
  const groups = new Map<number, { members: number[]; incomplete: boolean }>();
  for (let row = 0; row < of.length; row++) {
    const key = by ? (by[row] as number) : 0;
    if (Number.isNaN(key) || leftOut.has(row)) continue;
    const group = groups.get(key) ?? { members: [], incomplete: false };
    groups.set(key, group);
    if (Number.isNaN(of[row])) group.incomplete = true;
    else group.members.push(row);
  }
  return groups;
}

/**
 * The group's result at every row whose group is known. A row that is left out takes no part in it, and still gets it.
 * Errors: a row's own share keeps its source, so that X minus the mean of X knows that it holds X twice; what the other rows add is a source of its
 * own, the root of the sum of their squares; an error that all rows share adds up; what the scatter of the records leaves unsure is one more.
 */
export function groupColumn(
  calls: GroupFunction,
  of: NumberColumn,
  by: Float64Array | null,
  leftOut: { readonly has: (row: number) => boolean },
  says: string,
): NumberColumn {
  const groups = groupsOf(of.numbers, by, leftOut);
  const results = new Map<
    number,
    { readonly value: number; readonly weights: ReadonlyMap<number, number>; readonly scatter: number }
  >();
  for (const [key, { members, incomplete }] of groups) {
    const values = Float64Array.from(members, (row) => of.numbers[row] as number);
    const result = calls.needsAll && incomplete ? Number.NaN : calls.evaluate(values);
    const value = Number.isFinite(result) ? result : Number.NaN;
    const weights = of.errors.size > 0 ? calls.weights(values, value) : null;
    const scatter = Number.isNaN(value) ? 0 : (calls.scatter?.(values) ?? 0);
    results.set(key, {
      value,
      weights: new Map(weights ? members.map((row, i) => [row, weights[i] as number]) : []),
      scatter,
    });
  }
  const rowCount = of.numbers.length;
  const keyAt = (row: number): number => (by ? (by[row] as number) : 0);
  const numbers = new Float64Array(rowCount).map((_, row) => results.get(keyAt(row))?.value ?? Number.NaN);
  const errors = new Map<string, Contribution>();
  if ([...results.values()].some(({ scatter }) => scatter > 0)) {
    const spread = new Float64Array(rowCount).map((_, row) => results.get(keyAt(row))?.scatter ?? 0);
    errors.set(`spread of ${says}`, { values: spread, shared: false });
  }
  for (const [source, { values, shared }] of of.errors) {
    const sums = new Map(
      [...results].map(([key, { weights }]) => [
        key,
        [...weights].reduce(
          (sum, [row, weight]) =>
            sum + (shared ? weight * (values[row] as number) : (weight * (values[row] as number)) ** 2),
          0,
        ),
      ]),
    );
    const sumAt = (row: number): number => sums.get(keyAt(row)) ?? 0;
    if (shared) {
      errors.set(source, { values: new Float64Array(rowCount).map((_, row) => sumAt(row)), shared: true });
      continue;
    }
    const own = new Float64Array(rowCount).map(
      (_, row) => (results.get(keyAt(row))?.weights.get(row) ?? 0) * ((values[row] as number) || 0),
    );
    errors.set(source, { values: own, shared: false });
    errors.set(`${source} of others in ${says}`, {
      values: own.map((part, row) => Math.sqrt(Math.max(0, sumAt(row) - part * part))),
      shared: false,
    });
  }
  return { numbers, errors };
}

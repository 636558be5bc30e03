import type { Needs, Refusal } from "../base/index.ts";

/** What a method would be run on: the arrays by input name, and how many groups there are. Rows are complete. */
export type Supply = {
  readonly rows: number;
  readonly groups?: number;
  readonly arrays?: Readonly<Record<string, ArrayLike<number>>>;
  readonly names?: Readonly<Record<string, string>>;
};

/** Whether an array has so many different values; looks no further than it must. */
function hasDistinct(array: ArrayLike<number>, need: number): boolean {
  const seen = new Set<number>();
  for (let i = 0; i < array.length && seen.size < need; i++) seen.add(array[i] as number);
  return seen.size >= need;
}

/** The first thing that the data lack for a method, as a refusal; null when nothing does. Checks rows, groups, distinct values, signs in this order. */
export function firstLacking(needs: Needs, supply: Supply): Refusal | null {
  const nameOf = (input: string) => supply.names?.[input] ?? input;
  if (needs.rows !== undefined && supply.rows < needs.rows)
    return { code: "too-few-records", facts: { have: supply.rows, need: needs.rows } };
  if (needs.groups !== undefined && (supply.groups ?? 0) < needs.groups)
    return { code: "one-group", facts: { column: nameOf("group"), group: "all" } };
  for (const [input, array] of Object.entries(supply.arrays ?? {}))
    for (let i = 0; i < array.length; i++)
      if (!Number.isFinite(array[i]))
        return { code: "not-finite", facts: { name: `record ${i + 1} of ${nameOf(input)}` } };
  for (const [input, need] of Object.entries(needs.distinct ?? {})) {
    const array = supply.arrays?.[input];
    if (array && !hasDistinct(array, need)) return { code: "no-spread", facts: { column: nameOf(input) } };
  }
  for (const input of needs.positive ?? []) {
    const array = supply.arrays?.[input];
    if (array && Array.from(array).some((value) => !(value > 0)))
      return { code: "not-positive", facts: { column: nameOf(input) } };
  }
  return null;
}

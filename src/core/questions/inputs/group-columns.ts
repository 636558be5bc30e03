const isNumber = (label: string): boolean => label.trim() !== "" && Number.isFinite(Number(label));

/** Names of groups in the order in which they are shown: those of `first` as they stand there, then numbers by size, else by code point. */
export function groupsInOrder(labels: readonly string[], first: readonly string[] = []): readonly string[] {
  const names = [...new Set(labels)];
  const rest = names.filter((name) => !first.includes(name));
  rest.sort(rest.every(isNumber) ? (a, b) => Number(a) - Number(b) : (a, b) => (a < b ? -1 : 1));
  return [...new Set(first)].filter((name) => names.includes(name)).concat(rest);
}

/** The order of groups that a run asks for by its input `group_order`, as groupsInOrder takes it. */
export const orderInput = (given: unknown): readonly string[] =>
  Array.isArray(given) ? given.filter((name: unknown): name is string => typeof name === "string") : [];

/** Groups of a list of labels: names by groupsInOrder, and the code of each record. */
export function groupColumns(
  labels: readonly string[],
  first: readonly string[] = [],
): {
  readonly names: readonly string[];
  readonly codes: Int32Array;
  readonly columns: readonly Float64Array[];
} {
  const names = groupsInOrder(labels, first);
  const place = new Map(names.map((name, at) => [name, at]));
  const codes = Int32Array.from(labels, (label) => place.get(label) ?? -1);
  return { names, codes, columns: indicatorColumns(codes, names.length) };
}

/** One column of 0 and 1 for each group. */
export const indicatorColumns = (codes: Int32Array, groups: number): readonly Float64Array[] =>
  Array.from({ length: groups }, (_, group) => Float64Array.from(codes, (code) => (code === group ? 1 : 0)));

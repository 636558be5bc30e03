/** Groups of a list of labels: names in order of code point, and the code of each record. */
export function groupColumns(labels: readonly string[]): {
  readonly names: readonly string[];
  readonly codes: Int32Array;
  readonly columns: readonly Float64Array[];
} {
  const names = [...new Set(labels)].sort();
  const place = new Map(names.map((name, at) => [name, at]));
  const codes = Int32Array.from(labels, (label) => place.get(label) ?? -1);
  return { names, codes, columns: indicatorColumns(codes, names.length) };
}

/** One column of 0 and 1 for each group. */
export const indicatorColumns = (codes: Int32Array, groups: number): readonly Float64Array[] =>
  Array.from({ length: groups }, (_, group) => Float64Array.from(codes, (code) => (code === group ? 1 : 0)));

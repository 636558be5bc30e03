/**
 * An order of records that depends on their values alone, so that a seed gives the same numbers whatever the order of rows: by the first column, then the
 * next. columns: of one length, finite. Returns the places of the records in that order.
 */
export function canonicalOrder(columns: readonly (Float64Array | Int32Array)[]): Int32Array {
  const order = Int32Array.from((columns[0] ?? []).keys());
  return order.sort((a, b) => {
    for (const column of columns) {
      const difference = (column[a] as number) - (column[b] as number);
      if (difference !== 0) return difference;
    }
    return 0;
  });
}

/** Codes renamed by where each first stands: 0, 1, 2 ... */
export function codesByPlace(codes: Int32Array): Int32Array {
  const places = new Map<number, number>();
  return codes.map((code) => {
    const known = places.get(code) ?? places.size;
    places.set(code, known);
    return known;
  });
}

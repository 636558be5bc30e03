/**
 * Inverse of a small square matrix by Gauss and Jordan with row pivoting. A: p rows of length p, finite.
 * Result: rows of the inverse; null where a pivot falls below 1e-12 of the largest entry of its row, so that nothing can be said.
 * Source: Golub and Van Loan (2013), Matrix Computations, section 3.4.
 * @example inverseMatrix([new Float64Array([2, 0]), new Float64Array([0, 4])]) // 0.5 0 / 0 0.25
 */
export function inverseMatrix(A: readonly Float64Array[]): Float64Array[] | null {
  const p = A.length;
  const work: Float64Array[] = A.map((row, i) => {
    const size = row.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    const made = new Float64Array(2 * p);
    for (let k = 0; k < p; k++) made[k] = size > 0 ? (row[k] as number) / size : 0;
    made[p + i] = size > 0 ? 1 / size : 0;
    return made;
  });
  for (let j = 0; j < p; j++) {
    let best = j;
    for (let i = j + 1; i < p; i++)
      if (Math.abs((work[i] as Float64Array)[j] as number) > Math.abs((work[best] as Float64Array)[j] as number))
        best = i;
    const pivotRow = work[best] as Float64Array;
    const pivot = pivotRow[j] as number;
    if (!(Math.abs(pivot) > 1e-12)) return null;
    work[best] = work[j] as Float64Array;
    work[j] = pivotRow;
    for (let k = j; k < 2 * p; k++) pivotRow[k] = (pivotRow[k] as number) / pivot;
    for (let i = 0; i < p; i++) {
      const row = work[i] as Float64Array;
      const factor = row[j] as number;
      if (i === j || factor === 0) continue;
      for (let k = j; k < 2 * p; k++) row[k] = (row[k] as number) - factor * (pivotRow[k] as number);
    }
  }
  return work.map((row) => row.slice(p));
}

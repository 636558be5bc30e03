/** A column-pivoted Householder factorization X P = Q R of an n x p matrix, held in place as columns. */
export type HouseholderQr = {
  /** Reflectors below the diagonal, R above; columns in pivoted order. */
  readonly columns: readonly Float64Array[];
  readonly diagonal: Float64Array;
  readonly betas: Float64Array;
  /** pivot[j] is the original number of the column that stands at j. */
  readonly pivot: readonly number[];
  readonly rank: number;
};

const squared = (column: Float64Array, from: number): number => {
  let sum = 0;
  for (let i = from; i < column.length; i++) sum += (column[i] as number) ** 2;
  return sum;
};

/** Applies reflector j to a vector, in place. */
export function reflected(qr: Pick<HouseholderQr, "columns" | "betas">, j: number, vector: Float64Array): void {
  const v = qr.columns[j] as Float64Array;
  let dot = 0;
  for (let i = j; i < vector.length; i++) dot += (v[i] as number) * (vector[i] as number);
  const scale = dot * (qr.betas[j] as number);
  for (let i = j; i < vector.length; i++) vector[i] = (vector[i] as number) - scale * (v[i] as number);
}

/**
 * Householder QR with column pivoting. columns: p >= 1 arrays of length n, finite, copied. A column whose remaining length falls below
 * `tolerance` times its whole length is taken as dependent on those before it, and ends the rank. Leftmost wins a tie.
 * Source: G. H. Golub, C. F. Van Loan (2013), Matrix Computations, algorithm 5.4.1.
 */
export function householderQr(columns: readonly Float64Array[], tolerance: number): HouseholderQr {
  const work = columns.map((column) => Float64Array.from(column));
  const pivot = columns.map((_, j) => j);
  const whole = work.map((column) => Math.sqrt(squared(column, 0)));
  const diagonal = new Float64Array(columns.length);
  const betas = new Float64Array(columns.length);
  const n = work[0]?.length ?? 0;
  let rank = 0;
  for (let j = 0; j < Math.min(n, work.length); j++) {
    let best = j;
    let bestShare = -1;
    for (let k = j; k < work.length; k++) {
      const length = whole[k] as number;
      const share = length > 0 ? Math.sqrt(squared(work[k] as Float64Array, j)) / length : 0;
      if (share > bestShare * (1 + 1e-12)) [best, bestShare] = [k, share];
    }
    if (!(bestShare > tolerance)) break;
    for (const list of [work, pivot, whole] as unknown[][]) [list[j], list[best]] = [list[best], list[j]];
    const v = work[j] as Float64Array;
    const norm = Math.sqrt(squared(v, j));
    const alpha = (v[j] as number) > 0 ? -norm : norm;
    diagonal[j] = alpha;
    v[j] = (v[j] as number) - alpha;
    betas[j] = 2 / squared(v, j);
    for (let k = j + 1; k < work.length; k++) reflected({ columns: work, betas }, j, work[k] as Float64Array);
    rank = j + 1;
  }
  return { columns: work, diagonal, betas, pivot, rank };
}

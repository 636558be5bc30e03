export type SymmetricEigen = {
  readonly values: Float64Array /** vectors[k] belongs to values[k]. */;
  readonly vectors: readonly Float64Array[];
};

/**
 * Eigenvalues and vectors of a real symmetric matrix by cyclic Jacobi rotations. matrix: n rows, small n (cost n^3 a sweep), left as it is.
 * Stops when the off-diagonal is below 1e-30 of the whole, squared, or after 60 sweeps. Source: Golub and Van Loan (2013), algorithm 8.5.3.
 */
export function symmetricEigen(matrix: readonly Float64Array[]): SymmetricEigen {
  const n = matrix.length;
  const a = matrix.map((row) => Float64Array.from(row));
  const v = a.map((_, i) => Float64Array.from({ length: n }, (_, j) => (i === j ? 1 : 0)));
  const get = (m: readonly Float64Array[], i: number, j: number) => (m[i] as Float64Array)[j] as number;
  for (let sweep = 0; sweep < 60; sweep++) {
    let off = 0;
    let all = 0;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        all += get(a, i, j) ** 2;
        if (i !== j) off += get(a, i, j) ** 2;
      }
    if (off <= 1e-30 * all) break;
    for (let p = 0; p < n; p++)
      for (let q = p + 1; q < n; q++) {
        const apq = get(a, p, q);
        if (apq === 0) continue;
        const theta = (get(a, q, q) - get(a, p, p)) / (2 * apq);
        const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        const c = 1 / Math.sqrt(t * t + 1);
        const s = t * c;
        for (let k = 0; k < n; k++) {
          const [kp, kq] = [get(a, k, p), get(a, k, q)];
          (a[k] as Float64Array)[p] = c * kp - s * kq;
          (a[k] as Float64Array)[q] = s * kp + c * kq;
        }
        for (let k = 0; k < n; k++) {
          const [pk, qk] = [get(a, p, k), get(a, q, k)];
          (a[p] as Float64Array)[k] = c * pk - s * qk;
          (a[q] as Float64Array)[k] = s * pk + c * qk;
          const [vp, vq] = [get(v, p, k), get(v, q, k)];
          (v[p] as Float64Array)[k] = c * vp - s * vq;
          (v[q] as Float64Array)[k] = s * vp + c * vq;
        }
      }
  }
  return { values: Float64Array.from({ length: n }, (_, i) => get(a, i, i)), vectors: v };
}

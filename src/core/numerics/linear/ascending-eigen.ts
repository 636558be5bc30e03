// Eigenvalues and vectors of a symmetric matrix of some dozens or hundreds of rows; symmetricEigen serves small ones.
const STEPS = 60;

export type AscendingEigen = {
  /** Smallest first. */
  readonly values: Float64Array;
  /** vectors[k], of length 1, belongs to values[k]. */
  readonly vectors: readonly Float64Array[];
};

/** Householder's reduction to a tridiagonal: v (columns one after another) becomes the reflections' product, d the diagonal, e the side. */
function reduce(v: Float64Array, n: number, d: Float64Array, e: Float64Array): void {
  const at = (index: number) => v[index] as number;
  for (let j = 0; j < n; j++) d[j] = at(j * n + n - 1);
  for (let i = n - 1; i > 0; i--) {
    let scale = 0;
    let h = 0;
    for (let k = 0; k < i; k++) scale += Math.abs(d[k] as number);
    if (scale === 0) {
      e[i] = d[i - 1] as number;
      for (let j = 0; j < i; j++) {
        d[j] = at(j * n + i - 1);
        v[j * n + i] = 0;
        v[i * n + j] = 0;
      }
    } else {
      for (let k = 0; k < i; k++) {
        d[k] = (d[k] as number) / scale;
        h += (d[k] as number) ** 2;
      }
      const last = d[i - 1] as number;
      const root = last > 0 ? -Math.sqrt(h) : Math.sqrt(h);
      e[i] = scale * root;
      h -= last * root;
      d[i - 1] = last - root;
      e.fill(0, 0, i);
      for (let j = 0; j < i; j++) {
        const f = d[j] as number;
        v[i * n + j] = f;
        let g = (e[j] as number) + at(j * n + j) * f;
        for (let k = j + 1; k < i; k++) {
          const one = v[j * n + k] as number;
          g += one * (d[k] as number);
          e[k] = (e[k] as number) + one * f;
        }
        e[j] = g;
      }
      let along = 0;
      for (let j = 0; j < i; j++) {
        e[j] = (e[j] as number) / h;
        along += (e[j] as number) * (d[j] as number);
      }
      const half = along / (h + h);
      for (let j = 0; j < i; j++) e[j] = (e[j] as number) - half * (d[j] as number);
      for (let j = 0; j < i; j++) {
        const f = d[j] as number;
        const g = e[j] as number;
        for (let k = j; k < i; k++)
          v[j * n + k] = (v[j * n + k] as number) - f * (e[k] as number) - g * (d[k] as number);
        d[j] = at(j * n + i - 1);
        v[j * n + i] = 0;
      }
    }
    d[i] = h;
  }
}

/** The reflections of `reduce` multiplied out: columns of v. */
function accumulate(v: Float64Array, n: number, d: Float64Array, e: Float64Array): void {
  for (let i = 0; i < n - 1; i++) {
    const next = (i + 1) * n;
    v[i * n + n - 1] = v[i * n + i] as number;
    v[i * n + i] = 1;
    const h = d[i + 1] as number;
    if (h !== 0) {
      for (let k = 0; k <= i; k++) d[k] = (v[next + k] as number) / h;
      for (let j = 0; j <= i; j++) {
        let g = 0;
        for (let k = 0; k <= i; k++) g += (v[next + k] as number) * (v[j * n + k] as number);
        for (let k = 0; k <= i; k++) v[j * n + k] = (v[j * n + k] as number) - g * (d[k] as number);
      }
    }
    v.fill(0, next, next + i + 1);
  }
  for (let j = 0; j < n; j++) {
    d[j] = v[j * n + n - 1] as number;
    v[j * n + n - 1] = 0;
  }
  if (n > 0) v[n * n - 1] = 1;
  for (let i = 1; i < n; i++) e[i - 1] = e[i] as number;
  if (n > 0) e[n - 1] = 0;
}

/** One implicit QL sweep from row m down to row l, its turns carried into the columns of v. */
function sweep(v: Float64Array, n: number, d: Float64Array, e: Float64Array, l: number, m: number): void {
  const [dl, el] = [d[l] as number, e[l] as number];
  let g = ((d[l + 1] as number) - dl) / (2 * el);
  let r = Math.hypot(g, 1);
  g = (d[m] as number) - dl + el / (g + (g < 0 ? -r : r));
  let [s, c, p] = [1, 1, 0];
  for (let i = m - 1; i >= l; i--) {
    const f = s * (e[i] as number);
    const b = c * (e[i] as number);
    r = Math.hypot(f, g);
    e[i + 1] = r;
    if (r === 0) {
      d[i + 1] = (d[i + 1] as number) - p;
      e[m] = 0;
      return;
    }
    s = f / r;
    c = g / r;
    g = (d[i + 1] as number) - p;
    r = ((d[i] as number) - g) * s + 2 * c * b;
    p = s * r;
    d[i + 1] = g + p;
    g = c * r - b;
    const [low, high] = [i * n, (i + 1) * n];
    for (let k = 0; k < n; k++) {
      const x = v[high + k] as number;
      const y = v[low + k] as number;
      v[high + k] = s * y + c * x;
      v[low + k] = c * y - s * x;
    }
  }
  d[l] = dl - p;
  e[l] = g;
  e[m] = 0;
}

/**
 * Eigenvalues, ascending, and vectors of a real symmetric matrix: Householder tridiagonal form, then implicit QL.
 * matrix: n x n, row by row in one array (the lower half is read), left as it is; finite. About 9 n^3 operations.
 * Accuracy: a few machine epsilons of the largest eigenvalue, in absolute terms. 60 sweeps an eigenvalue at most.
 * Source: Wilkinson and Reinsch, Handbook for Automatic Computation II: Linear Algebra (1971), contributions II/2 (tred2) and II/4 (imtql2).
 */
export function ascendingEigen(matrix: Float64Array, n: number): AscendingEigen {
  const v = Float64Array.from(matrix);
  const d = new Float64Array(n);
  const e = new Float64Array(n);
  reduce(v, n, d, e);
  accumulate(v, n, d, e);
  for (let l = 0; l < n; l++)
    for (let step = 0; step < STEPS; step++) {
      let m = l;
      while (m < n - 1) {
        const both = Math.abs(d[m] as number) + Math.abs(d[m + 1] as number);
        if (Math.abs(e[m] as number) <= Number.EPSILON * both) break;
        m++;
      }
      if (m === l) break;
      sweep(v, n, d, e, l, m);
    }
  const order = Array.from({ length: n }, (_, k) => k).sort((i, j) => (d[i] as number) - (d[j] as number));
  return {
    values: Float64Array.from(order, (k) => d[k] as number),
    vectors: order.map((k) => v.slice(k * n, (k + 1) * n)),
  };
}

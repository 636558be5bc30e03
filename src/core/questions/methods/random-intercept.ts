// The restricted likelihood of a linear model with a random intercept, from sums of squares and group means alone.

export type Grouped = {
  readonly rows: number;
  readonly sizes: Float64Array;
  /** Sums of squares and products within groups of [constant, x1 ..., y], each column less its mean and in its own scale; row by row. */
  readonly within: Float64Array;
  /** Group means of the same columns, group by group. */
  readonly means: Float64Array;
  readonly centres: Float64Array;
  readonly scales: Float64Array;
};

/** Sums of squares of columns (the last is y), within groups and between them. codes: group of each record, from 0. */
export function groupedSums(columns: readonly Float64Array[], codes: Int32Array, groups: number): Grouped {
  const rows = codes.length;
  const k = columns.length + 1;
  const [centres, scales, sizes] = [new Float64Array(k), new Float64Array(k).fill(1), new Float64Array(groups)];
  for (const code of codes) sizes[code] = (sizes[code] as number) + 1;
  const means = new Float64Array(groups * k);
  const rests: Float64Array[] = [new Float64Array(rows)];
  for (let g = 0; g < groups; g++) means[g * k] = 1;
  columns.forEach((column, j) => {
    const centre = column.reduce((sum, v) => sum + v / rows, 0);
    const scale = Math.max(...[column.reduce((most, v) => Math.max(most, Math.abs(v - centre)), 0)]) || 1;
    centres[j + 1] = centre;
    scales[j + 1] = scale;
    const rest = column.map((v) => (v - centre) / scale);
    for (let i = 0; i < rows; i++) {
      const place = (codes[i] as number) * k + j + 1;
      means[place] = (means[place] as number) + (rest[i] as number) / (sizes[codes[i] as number] as number);
    }
    rests.push(rest.map((v, i) => v - (means[(codes[i] as number) * k + j + 1] as number)));
  });
  const within = new Float64Array(k * k);
  for (let a = 1; a < k; a++)
    for (let b = 1; b < k; b++)
      within[a * k + b] = (rests[a] as Float64Array).reduce(
        (s, v, i) => s + v * ((rests[b] as Float64Array)[i] as number),
        0,
      );
  return { rows, sizes, within, means, centres, scales };
}

export type AtRatio = {
  /** Lower Cholesky factor of the weighted sums of squares of [constant, x ..., y]. */
  readonly factor: Float64Array;
  readonly logDeterminant: number;
  readonly residual: number;
};

/** The weighted least-squares problem where the variance between groups is `ratio` times the one within. */
export function atRatio({ sizes, within, means, scales }: Grouped, ratio: number): AtRatio {
  const k = scales.length;
  const L = Float64Array.from(within);
  let logDeterminant = 0;
  for (let g = 0; g < sizes.length; g++) {
    const inflation = 1 + (sizes[g] as number) * ratio;
    const weight = (sizes[g] as number) / inflation;
    logDeterminant += Math.log(inflation);
    for (let a = 0; a < k; a++)
      for (let b = 0; b <= a; b++)
        L[a * k + b] = (L[a * k + b] as number) + weight * (means[g * k + a] as number) * (means[g * k + b] as number);
  }
  for (let j = 0; j < k; j++)
    for (let i = j; i < k; i++) {
      let rest = L[i * k + j] as number;
      for (let m = 0; m < j; m++) rest -= (L[i * k + m] as number) * (L[j * k + m] as number);
      L[i * k + j] = i === j ? Math.sqrt(Math.max(rest, 0)) : rest / (L[j * k + j] as number);
    }
  for (let j = 0; j < k - 1; j++) logDeterminant += 2 * Math.log((L[j * k + j] as number) * (scales[j] as number));
  return { factor: L, logDeterminant, residual: ((L[k * k - 1] as number) * (scales[k - 1] as number)) ** 2 };
}

/** Coefficients (constant first), and the inverse of X'V^-1 X times the variance within, of which the diagonal is given. */
export function coefficientsAt(
  { centres, scales }: Grouped,
  { factor: L }: AtRatio,
): { coef: number[]; spread: number[] } {
  const k = scales.length;
  const p = k - 1;
  const at = (i: number, j: number) => L[i * k + j] as number;
  const scaled = new Float64Array(p);
  for (let j = p - 1; j >= 0; j--) {
    let rest = at(p, j);
    for (let m = j + 1; m < p; m++) rest -= at(m, j) * (scaled[m] as number);
    scaled[j] = rest / at(j, j);
  }
  const y = scales[p] as number;
  const contrast = (j: number) =>
    Array.from({ length: p }, (_, m) =>
      j === 0
        ? m === 0
          ? 1
          : -(centres[m] as number) / (scales[m] as number)
        : m === j
          ? 1 / (scales[m] as number)
          : 0,
    );
  const contrasts = Array.from({ length: p }, (_, j) => contrast(j));
  const spread = contrasts.map((l) => {
    const z: number[] = [];
    for (let i = 0; i < p; i++) z.push(((l[i] as number) - z.reduce((s, v, m) => s + at(i, m) * v, 0)) / at(i, i));
    return z.reduce((s, v) => s + v * v, 0);
  });
  const coef = contrasts.map(
    (l, j) => y * l.reduce((s, v, m) => s + v * (scaled[m] as number), 0) + (j === 0 ? (centres[p] as number) : 0),
  );
  return { coef, spread };
}

/** Exact derivatives by the ratio: of the log determinant, and of the residual sum of squares. */
export function slopesAtRatio(data: Grouped, ratio: number): { determinant: number; residual: number } {
  const { sizes, means } = data;
  const k = data.scales.length;
  const { factor: L, residual } = atRatio(data, ratio);
  const z = new Float64Array(k);
  let determinant = 0;
  let share = 0;
  for (let g = 0; g < sizes.length; g++) {
    const weight = (sizes[g] as number) / (1 + (sizes[g] as number) * ratio);
    let spread = 0;
    for (let i = 0; i < k; i++) {
      let rest = means[g * k + i] as number;
      for (let m = 0; m < i; m++) rest -= (L[i * k + m] as number) * (z[m] as number);
      z[i] = rest / (L[i * k + i] as number);
      spread += (z[i] as number) ** 2;
    }
    const last = (z[k - 1] as number) ** 2;
    determinant += weight - weight * weight * (spread - last);
    share -= weight * weight * last;
  }
  return { determinant, residual: share * residual };
}

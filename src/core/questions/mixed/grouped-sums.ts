/** What the likelihood of a model with a random intercept needs of the records: sums of squares and group means alone. */
export type GroupedSums = {
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
export function groupedSums(columns: readonly Float64Array[], codes: Int32Array, groups: number): GroupedSums {
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
    for (let b = 1; b <= a; b++) {
      const [one, other] = [rests[a] as Float64Array, rests[b] as Float64Array];
      let sum = 0;
      for (let i = 0; i < rows; i++) sum += (one[i] as number) * (other[i] as number);
      within[a * k + b] = sum;
      within[b * k + a] = sum;
    }
  return { rows, sizes, within, means, centres, scales };
}

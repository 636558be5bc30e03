import { inverseMatrix } from "../linear/inverse-matrix.ts";

export type QuantilePlane = {
  /** Rows that the plane goes through, one a coefficient. */
  readonly basis: Int32Array;
  /** Whether no other plane is as good. */
  readonly isUnique: boolean;
};

/** What is the same for a whole descent: the columns, the records, the share below. */
type Task = { readonly X: readonly Float64Array[]; readonly tau: number; readonly signs: Int8Array };
type Vertex = {
  readonly basis: Int32Array;
  readonly inverse: readonly Float64Array[];
  readonly residuals: Float64Array;
};

function vertexAt({ X }: Task, y: Float64Array, basis: Int32Array): Vertex | null {
  const inverse = inverseMatrix(Array.from(basis, (row) => Float64Array.from(X, (column) => column[row] as number)));
  if (!inverse) return null;
  const residuals = y.slice();
  for (const [j, column] of X.entries()) {
    let b = 0;
    for (const [k, row] of basis.entries()) b += ((inverse[j] as Float64Array)[k] as number) * (y[row] as number);
    for (let i = 0; i < residuals.length; i++) residuals[i] = (residuals[i] as number) - b * (column[i] as number);
  }
  for (const row of basis) residuals[row] = 0;
  return { basis, inverse, residuals };
}

/** Slope of the loss when the plane lets go of each row of the basis; pulls[k] of the other records on that edge. */
function pullsAt({ X, tau, signs }: Task, { basis, inverse }: Vertex): Float64Array {
  const held = new Set(basis);
  const total = Float64Array.from(X, (column) => {
    let sum = 0;
    for (let i = 0; i < column.length; i++)
      if ((signs[i] as number) !== 0) sum += ((signs[i] as number) > 0 ? tau : tau - 1) * (column[i] as number);
    for (const row of held)
      if (signs[row] !== 0) sum -= ((signs[row] as number) > 0 ? tau : tau - 1) * (column[row] as number);
    return sum;
  });
  return Float64Array.from(basis, (_, k) =>
    total.reduce((sum, value, j) => sum + value * ((inverse[j] as Float64Array)[k] as number), 0),
  );
}

/** The record that stops the descent along one edge, and how far that is; the edge lets go of basis row k to the side given. */
function stopOn(
  { X, signs }: Task,
  { basis, inverse, residuals }: Vertex,
  edge: { readonly k: number; readonly side: number; readonly slope: number },
): { readonly row: number; readonly step: number } {
  const change = new Float64Array(residuals.length);
  for (const [j, column] of X.entries()) {
    const weight = edge.side * ((inverse[j] as Float64Array)[edge.k] as number);
    for (let i = 0; i < change.length; i++) change[i] = (change[i] as number) + weight * (column[i] as number);
  }
  for (const row of basis) change[row] = 0;
  const rows: number[] = [];
  const steps = new Float64Array(change.length);
  for (let i = 0; i < change.length; i++) {
    if (!((change[i] as number) * (signs[i] as number) > 0)) continue;
    steps[i] = Math.max(0, (residuals[i] as number) / (change[i] as number));
    rows.push(i);
  }
  rows.sort((a, b) => (steps[a] as number) - (steps[b] as number) || a - b);
  let slope = edge.slope;
  for (const row of rows) {
    slope += Math.abs(change[row] as number);
    if (slope >= 0) return { row, step: steps[row] as number };
  }
  return { row: -1, step: 0 };
}

const FLAT = 1e-9;

/** The steepest edge: which row is let go, to which side, and the slope of the loss there; slope 0 or more at the best plane. */
function steepest(pulls: Float64Array, tau: number): { k: number; side: number; slope: number } {
  let best = { k: 0, side: 1, slope: Number.POSITIVE_INFINITY };
  for (const [k, pull] of pulls.entries())
    for (const side of [1, -1]) {
      const slope = (side > 0 ? 1 - tau : tau) - side * pull;
      if (slope < best.slope) best = { k, side, slope };
    }
  return best;
}

/** Descends from vertex to vertex until no edge goes down; `signs` of records on the plane are kept from before. */
function descended(task: Task, y: Float64Array, from: Int32Array, zero: number): Vertex | null {
  let vertex = vertexAt(task, y, from);
  for (let round = 0; vertex && round < 50 * y.length + 100; round++) {
    const { residuals, basis } = vertex;
    for (let i = 0; i < residuals.length; i++) {
      const r = residuals[i] as number;
      if (Math.abs(r) > zero) task.signs[i] = Math.sign(r);
    }
    const edge = steepest(pullsAt(task, vertex), task.tau);
    if (edge.slope > -FLAT) return vertex;
    const stop = stopOn(task, vertex, edge);
    if (stop.row < 0) return vertex;
    task.signs[basis[edge.k] as number] = -edge.side;
    vertex = vertexAt(
      task,
      y,
      basis.map((row, k) => (k === edge.k ? stop.row : row)),
    );
  }
  return vertex;
}

/**
 * The plane of least asymmetric absolute residuals, tau r above and (tau - 1) r below: the tau-quantile of y given X, exact as a vertex, that is by
 * the records it goes through. Edges are followed downhill, each as far as the weighted median of its crossings. Records that tie are first moved
 * apart by 1e-9 of the scatter, so that no vertex is left by a step of nothing; the vertex so found is then held to the records as they are.
 * X: p columns of full rank, best of size about 1; y: length n > p; start: p independent rows; tau in (0, 1). Null where a vertex cannot be solved.
 * Source: R. Koenker, G. Bassett (1978), Econometrica 46, 33-50; I. Barrodale, F. D. K. Roberts (1973), SIAM J. Numer. Anal. 10, 839-848.
 */
export function quantilePlane(
  X: readonly Float64Array[],
  y: Float64Array,
  tau: number,
  start: Int32Array,
): QuantilePlane | null {
  const task: Task = { X, tau, signs: new Int8Array(y.length).fill(1) };
  const first = vertexAt(task, y, start);
  if (!first) return null;
  const scatter = first.residuals.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const apart = y.map((value, i) => value + 1e-9 * scatter * ((0.6180339887498949 * (i + 1)) % 1));
  const near = descended(task, apart, start, 0);
  const best = near && descended(task, y, near.basis, 1e-13 * scatter);
  if (!best) return null;
  const flat = Array.from(pullsAt(task, best), (pull, k) =>
    [1, -1].map((side) => ({ k, side, slope: (side > 0 ? 1 - tau : tau) - side * pull })),
  ).flat();
  const isUnique = flat.every(
    (edge) => edge.slope > FLAT || !(stopOn(task, best, { ...edge, slope: -FLAT }).step > 1e-12 * scatter),
  );
  return { basis: best.basis, isUnique };
}

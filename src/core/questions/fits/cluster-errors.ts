import { symmetricEigen } from "../../numerics/index.ts";
import type { LinearFit } from "./linear-fit.ts";

export type ClusterErrors = {
  readonly clusters: number;
  readonly cr0: Float64Array;
  readonly cr1: Float64Array;
  readonly cr2: Float64Array /** Satterthwaite degrees of freedom of each CR2. */;
  readonly degreesOfFreedom: Float64Array;
};

const at = (matrix: readonly Float64Array[], i: number, j: number): number => (matrix[i] as Float64Array)[j] as number;

/** C with C C' = M, from the eigenvalues of M scaled to a unit diagonal. */
function rootOf(M: readonly Float64Array[]): Float64Array[] {
  const d = M.map((row, j) => Math.sqrt(row[j] as number));
  const { values, vectors } = symmetricEigen(
    M.map((row, i) => row.map((value, j) => value / ((d[i] as number) * (d[j] as number)))),
  );
  return M.map((_, i) =>
    Float64Array.from(values, (value, k) => (d[i] as number) * at(vectors, k, i) * Math.sqrt(Math.max(0, value))),
  );
}

/**
 * Standard errors that treat the records of one cluster as one piece of evidence: CR0 (plain), CR1 (times G/(G-1) (n-1)/(n-p)) and CR2, whose
 * residuals are corrected by (I - H_g)^(-1/2), with Satterthwaite degrees of freedom under equal independent errors. Cost n p^2.
 * fit: unweighted; codes: cluster of each record, 0 … clusters - 1. Source: Bell and McCaffrey (2002), eqs. 3.4 and 3.7.
 */
export function clusterErrors(fit: LinearFit, codes: Int32Array, clusters: number): ClusterErrors {
  const p = fit.X.length;
  const n = fit.residuals.length;
  const M = fit.inverse;
  const C = rootOf(M);
  const members = Array.from({ length: clusters }, (): number[] => []);
  for (let i = 0; i < n; i++) members[codes[i] as number]?.push(i);
  const [plainSum, corrected] = [new Float64Array(p), new Float64Array(p)];
  const S = Array.from({ length: p }, () => Array.from({ length: p }, () => new Float64Array(p)));
  const [trace, squares] = [new Float64Array(p), new Float64Array(p)];
  for (const rows of members) {
    if (rows.length === 0) continue;
    const x = rows.map((i) => Float64Array.from(fit.X, (column) => column[i] as number));
    const Z = x.map((row) =>
      Float64Array.from({ length: p }, (_, k) => row.reduce((sum, value, j) => sum + value * at(C, j, k), 0)),
    );
    const gram = Array.from({ length: p }, (_, a) =>
      Float64Array.from({ length: p }, (_, b) =>
        Z.reduce((sum, row) => sum + (row[a] as number) * (row[b] as number), 0),
      ),
    );
    const { values, vectors } = symmetricEigen(gram);
    const growth = values.map((l) => (l < 1e-14 ? 0.5 : 1 - l < 1e-10 ? -1 / l : (1 / Math.sqrt(1 - l) - 1) / l));
    for (let c = 0; c < p; c++) {
      const pull = Float64Array.from(x, (row) => row.reduce((sum, value, j) => sum + value * at(M, j, c), 0));
      const a = Float64Array.from(pull);
      for (let k = 0; k < p; k++) {
        const direction = Z.map((row) =>
          (vectors[k] as Float64Array).reduce((sum, value, j) => sum + value * (row[j] as number), 0),
        );
        const along = direction.reduce((sum, value, i) => sum + value * (pull[i] as number), 0) * (growth[k] as number);
        for (let i = 0; i < a.length; i++) a[i] = (a[i] as number) + along * (direction[i] as number);
      }
      const dot = (v: Float64Array) =>
        rows.reduce((sum, row, i) => sum + (v[i] as number) * (fit.residuals[row] as number), 0);
      plainSum[c] = (plainSum[c] as number) + dot(pull) ** 2;
      corrected[c] = (corrected[c] as number) + dot(a) ** 2;
      const u = Float64Array.from({ length: p }, (_, j) =>
        x.reduce((sum, row, i) => sum + (row[j] as number) * (a[i] as number), 0),
      );
      const v = Float64Array.from({ length: p }, (_, k) => u.reduce((sum, value, j) => sum + value * at(C, j, k), 0));
      const d = a.reduce((sum, value) => sum + value * value, 0);
      const q = v.reduce((sum, value) => sum + value * value, 0);
      trace[c] = (trace[c] as number) + d - q;
      squares[c] = (squares[c] as number) + d * d - 2 * d * q;
      const own = S[c] as Float64Array[];
      for (let i = 0; i < p; i++)
        for (let j = 0; j < p; j++) (own[i] as Float64Array)[j] = at(own, i, j) + (v[i] as number) * (v[j] as number);
    }
  }
  const spread = S.map((own) =>
    own.reduce((sum, row) => sum + row.reduce((part, value) => part + value * value, 0), 0),
  );
  const factor = Math.sqrt((clusters / (clusters - 1)) * ((n - 1) / (n - p)));
  return {
    clusters,
    cr0: plainSum.map(Math.sqrt),
    cr1: plainSum.map((value) => Math.sqrt(value) * factor),
    cr2: corrected.map(Math.sqrt),
    degreesOfFreedom: trace.map((value, c) => (value * value) / ((squares[c] as number) + (spread[c] as number))),
  };
}

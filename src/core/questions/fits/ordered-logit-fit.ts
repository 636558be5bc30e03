// The ordered logit: log odds of a grade of k or lower are a threshold less what the quantities add.
import { type Climbed, climbed, positiveDefinite, type Slope } from "../../numerics/index.ts";

export type OrderedLogit = {
  /** Columns of the design, no constant. */
  readonly X: readonly Float64Array[];
  /** Grade of each record, 0 to grades - 1; every grade occurs. */
  readonly codes: Int32Array;
  readonly weights: Float64Array;
  readonly grades: number;
};

const logistic = (u: number): number => 1 / (1 + Math.exp(-u));

/** F(high) - F(low) without the loss of two numbers near one. */
const between = (low: number, high: number): number =>
  low > 0 ? logistic(-low) - logistic(-high) : logistic(high) - logistic(low);

/** Log likelihood, gradient and information at [thresholds, slopes]; null where the thresholds do not rise. */
export function orderedLogitAt({ X, codes, weights, grades }: OrderedLogit, place: Float64Array) {
  const cuts = grades - 1;
  const size = cuts + X.length;
  for (let k = 1; k < cuts; k++) if (!((place[k] as number) > (place[k - 1] as number))) return null;
  const gradient = new Float64Array(size);
  const information = new Float64Array(size * size);
  let height = 0;
  const row = new Float64Array(X.length);
  const high = new Float64Array(size);
  const low = new Float64Array(size);
  for (let i = 0; i < codes.length; i++) {
    const [code, weight] = [codes[i] as number, weights[i] as number];
    if (weight === 0) continue;
    let eta = 0;
    for (let j = 0; j < X.length; j++) {
      row[j] = (X[j] as Float64Array)[i] as number;
      eta += (row[j] as number) * (place[cuts + j] as number);
    }
    const u = code < cuts ? (place[code] as number) - eta : Number.POSITIVE_INFINITY;
    const v = code > 0 ? (place[code - 1] as number) - eta : Number.NEGATIVE_INFINITY;
    const chance = between(v, u);
    if (!(chance > 0)) return null;
    height += weight * Math.log(chance);
    const [fu, fv] = [
      u === Number.POSITIVE_INFINITY ? 0 : logistic(u) * logistic(-u),
      v === Number.NEGATIVE_INFINITY ? 0 : logistic(v) * logistic(-v),
    ];
    const [du, dv] = [fu / chance, -fv / chance];
    const uu = (fu * (logistic(-u) - logistic(u))) / chance - du * du || 0;
    const vv = (-fv * (logistic(-v) - logistic(v))) / chance - dv * dv || 0;
    const uv = -du * dv;
    high.fill(0);
    low.fill(0);
    if (code < cuts) high[code] = 1;
    if (code > 0) low[code - 1] = 1;
    for (let j = 0; j < X.length; j++) {
      if (code < cuts) high[cuts + j] = -(row[j] as number);
      if (code > 0) low[cuts + j] = -(row[j] as number);
    }
    for (let a = 0; a < size; a++) {
      const [ha, la] = [high[a] as number, low[a] as number];
      if (ha === 0 && la === 0) continue;
      gradient[a] = (gradient[a] as number) + weight * (du * ha + dv * la);
      for (let b = 0; b < size; b++) {
        const [hb, lb] = [high[b] as number, low[b] as number];
        const second = uu * ha * hb + vv * la * lb + uv * (ha * lb + la * hb);
        information[a * size + b] = (information[a * size + b] as number) - weight * second;
      }
    }
  }
  return { height, gradient, information };
}

/** Thresholds at which the grades occur as often as they do, with no quantity. */
function startOf({ X, codes, weights, grades }: OrderedLogit): Float64Array {
  const counts = new Float64Array(grades);
  for (let i = 0; i < codes.length; i++)
    counts[codes[i] as number] = (counts[codes[i] as number] as number) + (weights[i] as number);
  const all = counts.reduce((sum, count) => sum + count, 0);
  const start = new Float64Array(grades - 1 + X.length);
  let below = 0;
  for (let k = 0; k < grades - 1; k++) {
    below += counts[k] as number;
    start[k] = Math.log(below / (all - below));
  }
  return start;
}

/**
 * The thresholds and slopes with the largest likelihood. null where the climb does not converge, as where the quantities part the grades.
 * Source: McCullagh (1980), JRSS B 42, 109-142; Newton's steps on the exact second derivatives.
 */
export const orderedLogitFit = (data: OrderedLogit): Climbed | null =>
  climbed(startOf(data), (place): Slope | null => {
    const at = orderedLogitAt(data, place);
    const step = at ? positiveDefinite(at.information, place.length)?.solve(at.gradient) : undefined;
    if (!at || !step) return null;
    return {
      height: at.height,
      step,
      gain: step.reduce((sum, value, j) => sum + value * (at.gradient[j] as number), 0),
    };
  });

import {
  bracketedRoot,
  everySubset,
  generatorFromSeed,
  leastSquares,
  median,
  positiveDefinite,
  subsetsOf,
} from "../../numerics/index.ts";
import { canonicalOrder } from "../resampling/canonical-order.ts";
import { usualSeed } from "../resampling/usual-seed.ts";
import { bisquare } from "./bisquare.ts";

/** The plane whose residuals have the smallest S-scale; scale 0 where too many records lie on it, up to rounding. */
export type SFit = {
  readonly coefficients: Float64Array;
  readonly residuals: Float64Array;
  readonly scale: number;
  /** Starts that were tried, and whether those were all choices of p records. */
  readonly starts: number;
  readonly isAll: boolean;
  /** Another plane whose scale is as small within RIVAL; null where there is none. */
  readonly rival: Float64Array | null;
};
/** c of the bisquare and the share that the mean of rho must have. */
export type STuning = { readonly c: number; readonly breakdown: number };

/** Up to so many choices of p records all are tried as starts, else some are drawn; from MOST records or all, of which the BEST are carried to the end and the LAST unlike ones on with all records. */
const FEW = 10_000;
const MOST = 500;
const BEST = 10;
const LAST = 3;
const STEPS = 500;
/** A plane whose scale is larger by no more than this share is as good for all that the records say. */
const RIVAL = 0.02;
/** What rounding leaves of a residual that is zero. */
const NOTHING = 1e-12;

const meanOfRho = (residuals: Float64Array, scale: number, p: number): number => {
  let sum = 0;
  for (const r of residuals) sum += bisquare.rho(r / scale);
  return sum / (residuals.length - p);
};

/** The scale s at which the sum of rho(r / (c s)) is breakdown (n - p), of residuals of a y of about the size 1; 0 where too many are rounding alone. */
export function sScale(residuals: Float64Array, p: number, { c, breakdown }: STuning): number {
  const largest = residuals.reduce((most, r) => Math.max(most, Math.abs(r)), 0);
  const some = residuals.reduce((count, r) => count + (Math.abs(r) > NOTHING ? 1 : 0), 0);
  if (some <= breakdown * (residuals.length - p)) return 0;
  const off = (log: number) => meanOfRho(residuals, c * Math.exp(log), p) - breakdown;
  let low = Math.log(median(residuals.map(Math.abs)) / 0.6745 || largest);
  let high = low;
  while (off(low) <= 0) low -= 0.7;
  while (off(high) >= 0) high += 0.7;
  return Math.exp(bracketedRoot(off, low, high));
}

const residualsOf = (X: readonly Float64Array[], y: Float64Array, b: Float64Array): Float64Array => {
  const out = y.slice();
  for (const [j, column] of X.entries())
    for (let i = 0; i < out.length; i++) out[i] = (out[i] as number) - (column[i] as number) * (b[j] as number);
  return out;
};

/** Weighted least squares by normal equations, good enough for columns of one size; null where the weights leave too little. */
function weighted(X: readonly Float64Array[], y: Float64Array, weights: Float64Array): Float64Array | null {
  const p = X.length;
  const products = new Float64Array(p * p);
  const right = new Float64Array(p);
  for (let a = 0; a < p; a++) {
    const own = X[a] as Float64Array;
    for (let i = 0; i < y.length; i++) {
      const term = (weights[i] as number) * (own[i] as number);
      right[a] = (right[a] as number) + term * (y[i] as number);
      for (let b = 0; b <= a; b++)
        products[a * p + b] = (products[a * p + b] as number) + term * ((X[b] as Float64Array)[i] as number);
    }
    for (let b = 0; b < a; b++) products[b * p + a] = products[a * p + b] as number;
  }
  return positiveDefinite(products, p)?.solve(right) ?? null;
}

type Candidate = { readonly coefficients: Float64Array; readonly scale: number };

/** Moves a plane towards the records around it: weights of its residuals, least squares, one step of their scale, until both stand still or `steps` are made. */
function concentrated(
  X: readonly Float64Array[],
  y: Float64Array,
  start: Float64Array,
  { c, breakdown }: STuning,
  steps: number,
): { readonly coefficients: Float64Array; readonly residuals: Float64Array } {
  let coefficients = start;
  let residuals = residualsOf(X, y, start);
  let scale = median(residuals.map(Math.abs)) / 0.6745;
  for (let step = 0; step < steps && scale > 0; step++) {
    const before = scale;
    scale *= Math.sqrt(meanOfRho(residuals, c * scale, X.length) / breakdown);
    const next = weighted(
      X,
      y,
      residuals.map((r) => bisquare.weight(r / (c * scale))),
    );
    if (!next) break;
    const moved = Math.hypot(...next.map((b, j) => b - (coefficients[j] as number)));
    [coefficients, residuals] = [next, residualsOf(X, y, next)];
    if (moved <= 1e-15 * Math.hypot(...next) && Math.abs(scale - before) <= 1e-14 * scale) break;
  }
  return { coefficients, residuals };
}

/** Draws after which one of p good records is missing once in ten thousand times though half of all are wild; 500 at least. */
const drawsFor = (p: number): number => Math.max(500, Math.ceil(Math.log(1e-4) / Math.log1p(-(0.5 ** p))));

/** Each start that is tried, as places of p records. */
function eachStart(n: number, p: number, see: (chosen: Int32Array) => void): { starts: number; isAll: boolean } {
  if (subsetsOf(n, p) <= FEW) {
    everySubset(n, p, see);
    return { starts: subsetsOf(n, p), isAll: true };
  }
  const generator = generatorFromSeed(usualSeed).split("starts of an S-estimate");
  const places = Int32Array.from({ length: n }, (_, i) => i);
  const starts = drawsFor(p);
  for (let draw = 0; draw < starts; draw++) {
    for (let i = 0; i < p; i++) {
      const other = i + Math.floor(generator.next() * (n - i));
      [places[i], places[other]] = [places[other] as number, places[i] as number];
    }
    see(places.slice(0, p));
  }
  return { starts, isAll: false };
}

/** The best planes through p records each, after two steps towards the records around them. Ones that cannot beat the tenth best are dropped unseen. */
function candidates(X: readonly Float64Array[], y: Float64Array, tuning: STuning) {
  const p = X.length;
  const best: Candidate[] = [];
  const tried = eachStart(y.length, p, (chosen) => {
    const at = (column: Float64Array) => Float64Array.from(chosen, (i) => column[i] as number);
    const through = leastSquares(X.map(at), at(y));
    if (through.rank < p) return;
    const { coefficients, residuals } = concentrated(X, y, through.coefficients, tuning, 2);
    const worst = best.length < BEST ? null : (best.at(-1) as Candidate).scale;
    if (worst !== null && !(worst > 0 && meanOfRho(residuals, tuning.c * worst, p) < tuning.breakdown)) return;
    best.push({ coefficients, scale: sScale(residuals, p, tuning) });
    best.sort((a, b) => a.scale - b.scale);
    if (best.length > BEST) best.pop();
  });
  return { best, ...tried };
}

/** Planes in their order, each once. */
const unlikeOnes = (planes: readonly Candidate[]): readonly Candidate[] =>
  planes.filter((one, i) =>
    planes
      .slice(0, i)
      .every(({ coefficients }) => coefficients.some((b, j) => Math.abs(b - (one.coefficients[j] as number)) > 1e-6)),
  );

/**
 * The S-estimate of regression with the bisquare: least S-scale of the residuals, from many starts (every choice of p records where they are few, else seeded
 * draws), each concentrated and the best carried to the end (fast-S). X: p columns of length n >= 2 p + 1, of full rank, they and y of about the size 1. Deterministic, whatever
 * the order of records. Source: P. Rousseeuw, V. Yohai (1984), Robust and Nonlinear Time Series, 256-272; M. Salibian-Barrera, V. J. Yohai (2006), JCGS 15, 414-427.
 */
export function sFit(X: readonly Float64Array[], y: Float64Array, tuning: STuning): SFit | null {
  const order = canonicalOrder([y, ...X]);
  const size = Math.min(order.length, MOST);
  const some = Int32Array.from({ length: size }, (_, i) => order[Math.floor((i * order.length) / size)] as number);
  const at = (places: Int32Array) => (column: Float64Array) => Float64Array.from(places, (i) => column[i] as number);
  const ended = (among: Int32Array, starts: readonly Candidate[]): readonly Candidate[] => {
    const [own, ownY] = [X.map(at(among)), at(among)(y)];
    return starts
      .map((start) => {
        const { coefficients, residuals } = concentrated(own, ownY, start.coefficients, tuning, STEPS);
        return { coefficients, scale: sScale(residuals, X.length, tuning) };
      })
      .sort((one, other) => one.scale - other.scale);
  };
  const { best, starts, isAll } = candidates(X.map(at(some)), at(some)(y), tuning);
  const [first, ...others] = ended(order, unlikeOnes(ended(some, best)).slice(0, LAST));
  if (!first) return null;
  const { coefficients, scale } = first;
  const [rival] = unlikeOnes([first, ...others.filter((one) => one.scale <= scale * (1 + RIVAL))]).slice(1);
  return {
    coefficients,
    residuals: residualsOf(X, y, coefficients),
    scale,
    starts,
    isAll,
    rival: rival?.coefficients ?? null,
  };
}

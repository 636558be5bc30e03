import { Defect } from "../base/index.ts";

const STEPS = 300;

/**
 * Root of a continuous function between two places where its signs differ (Brent's method: inverse quadratic steps, bisection where
 * they do not help). f: finite on [low, high]; f(low) and f(high) of unlike sign or zero, else a Defect.
 * Stops when the bracket is within 4 ulp plus `tolerance` (absolute, default 0); after 300 steps it returns the best place.
 * Source: R. P. Brent (1973), Algorithms for Minimization without Derivatives, chapter 4.
 */
export function bracketedRoot(f: (x: number) => number, low: number, high: number, tolerance = 0): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) throw new Defect("bracketedRoot: no change of sign");
  let c = a;
  let fc = fa;
  let step = b - a;
  let before = step;
  for (let i = 0; i < STEPS; i++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const close = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= close || fb === 0) return b;
    if (Math.abs(before) < close || Math.abs(fa) <= Math.abs(fb)) {
      step = half;
      before = half;
    } else {
      const s = fb / fa;
      let p = 2 * half * s;
      let q = 1 - s;
      if (a !== c) {
        const r = fb / fc;
        const t = fa / fc;
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      p = Math.abs(p);
      const useful = 2 * p < Math.min(3 * half * q - Math.abs(close * q), Math.abs(before * q));
      before = useful ? step : half;
      step = useful ? p / q : half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > close ? step : half > 0 ? close : -close;
    fb = f(b);
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      before = step;
    }
  }
  return b;
}

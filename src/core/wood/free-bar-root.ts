import { freeBarRoots } from "./free-bar-roots.ts";

/** Root n = 1, 2, 3 … of cos x cosh x = 1: the bending shapes of a free bar, to rounding. Source: as freeBarRoots; beyond the third by Newton from (n + 1/2) pi. */
export function freeBarRoot(mode: number): number {
  let x: number = freeBarRoots[mode - 1] ?? (mode + 0.5) * Math.PI;
  for (let step = 0; step < 4; step++) {
    const other = 1 / Math.cosh(x);
    x += (Math.cos(x) - other) / (Math.sin(x) - Math.tanh(x) * other);
  }
  return x;
}

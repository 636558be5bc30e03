import { positiveDefinite } from "../../numerics/index.ts";
import { classEnergy } from "./class-energy.ts";
import { classModes, type SolvedClass } from "./class-modes.ts";
import type { ParityClass } from "./parity-class.ts";

const STEPS = 100;

/**
 * The lowest mode alone of a class without rigid motions (odd both ways), by inverse iteration: a fraction of the cost of all modes. A class whose energy cannot
 * be factored is solved whole. Converged when the shape moves by less than 1e-12. Source: Parlett (1998), The Symmetric Eigenvalue Problem, section 4.2.
 */
export function lowestMode(parity: ParityClass, weights: readonly number[]): SolvedClass {
  const n = parity.degrees.length;
  const energy = classEnergy(parity, weights);
  const factored = positiveDefinite(energy, n);
  if (!factored) return classModes(parity, weights);
  let shape: Float64Array = Float64Array.from({ length: n }, (_, i) => 1 / (energy[i * n + i] as number));
  for (let step = 0; step < STEPS; step++) {
    const next = factored.solve(shape);
    const size = Math.hypot(...next);
    let moved = 0;
    for (let i = 0; i < n; i++) {
      next[i] = (next[i] as number) / size;
      moved = Math.max(moved, Math.abs((next[i] as number) - (shape[i] as number)));
    }
    shape = next;
    if (moved < 1e-12) break;
  }
  let square = 0;
  for (let i = 0, at = 0; i < n; i++) {
    let row = 0;
    for (let j = 0; j < n; j++) row += (energy[at++] as number) * (shape[j] as number);
    square += (shape[i] as number) * row;
  }
  return { parity, weights, squares: Float64Array.of(square), shapes: [shape] };
}

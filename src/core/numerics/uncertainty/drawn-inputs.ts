import type { Generator } from "../../base/index.ts";
import { fillLaw } from "./fill-law.ts";
import { type InputLaw, lawStandardUncertainty } from "./input-law.ts";
import { SOBOL_COORDINATES, sobolPoints } from "./sobol-points.ts";

const plainPoints = (generator: Generator) => (into: Float64Array, count: number) => {
  for (let i = 0; i < count; i++) into[i] = generator.next() || 2 ** -54;
};

/** How the uniform numbers were made: evenly spread while there are enough coordinates, else plain. */
export type DrawnInputs = {
  readonly spread: "Sobol points" | "plain draws";
  /** Fills a list a law with the next `count` joint draws. */
  readonly next: (into: readonly Float64Array[], count: number) => void;
};

/**
 * Joint draws of inputs, by the million. laws: one an input; factor: lower triangular factor (n x n, row by row) of the correlation matrix of the
 * inputs, null where all are independent; inputs that are correlated must be normal, the others keep their laws. generator: each input has a stream of its own, split by its place.
 * block: the largest count that will be asked for at once.
 * Source: JCGM 101:2008, 6.4.8 (correlated normals) and annex C; sobolPoints for the evenly spread numbers.
 */
export function drawnInputs(
  laws: readonly InputLaw[],
  factor: Float64Array | null,
  generator: Generator,
  block: number,
): DrawnInputs {
  const n = laws.length;
  const coordinates = n + laws.filter((one) => one.law === "t").length;
  const isSpread = coordinates <= SOBOL_COORDINATES;
  const points = Array.from({ length: coordinates }, (_, at) => {
    const own = generator.split(`input ${at + 1}`);
    return isSpread ? sobolPoints(at, own) : plainPoints(own);
  });
  const second = new Float64Array(block);
  const isOff = (i: number, j: number) => i !== j && factor !== null && factor[i * n + j] !== 0;
  const mixed = laws.flatMap((_, i) => (laws.some((__, j) => isOff(i, j) || isOff(j, i)) ? [i] : []));
  const drawn = laws.map((one, i): InputLaw => (mixed.includes(i) ? { law: "normal", mean: 0, sd: 1 } : one));
  const scales = laws.map(lawStandardUncertainty);
  const row = new Float64Array(n);
  function mix(into: readonly Float64Array[], count: number, L: Float64Array): void {
    for (let k = 0; k < count; k++) {
      for (const i of mixed) row[i] = into[i]?.[k] as number;
      for (const i of mixed) {
        let sum = 0;
        for (let j = 0; j <= i; j++) sum += (L[i * n + j] as number) * (row[j] as number);
        (into[i] as Float64Array)[k] = (laws[i] as InputLaw).mean + (scales[i] as number) * sum;
      }
    }
  }
  return {
    spread: isSpread ? "Sobol points" : "plain draws",
    next: (into, count) => {
      let further = n;
      for (const [i, law] of drawn.entries()) {
        const list = into[i] as Float64Array;
        points[i]?.(list, count);
        if (law.law === "t") points[further++]?.(second, count);
        fillLaw(law, list, second, count);
      }
      if (factor) mix(into, count, factor);
    },
  };
}

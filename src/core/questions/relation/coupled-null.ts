import { drawToFront, generatorFromSeed, leastSquares, quantile, quickNormalQuantile } from "../../numerics/index.ts";
import { correlation } from "../fits/correlation.ts";

import { type PlaceAmongDraws, placeAmongDraws } from "../resampling/place-among-draws.ts";
import { usualSeed } from "../resampling/usual-seed.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { SharedError } from "./shared-errors.ts";

/** What the records would show if only the errors of shared measurements tied y to x. Correlations are of what the rest of the design leaves of y and x. */
export type CoupledNull = PlaceAmongDraws & {
  /** The correlation that the records have. */
  readonly seen: number;
  /** 95 % of the drawn ones lie between these. */
  readonly low: number;
  readonly high: number;
  readonly seed: number;
};

/** Draws are as many as this number of drawn records allows, within limits. */
const WORK = 200_000;
const [FEWEST, MOST_DRAWS] = [99, 999];
/** Of more records than this as many are taken: the answer is then the warier one. */
const MOST = 2000;

/** What the other columns of the design leave of some values, at evenly spread records. */
function left(design: RelationDesign, values: Float64Array, place: number, at: Int32Array): Float64Array {
  const others = design.columns.filter((_, j) => j !== place);
  const { residuals } = leastSquares(others, values);
  return Float64Array.from(at, (i) => residuals[i] as number);
}

/**
 * Draws the world in which y and the x at place `which` have nothing to do with each other but errors of measurements that both were computed from:
 * y is dealt out among the records, then one normal error a record and source moves both. `errors` not empty. Deterministic.
 * Source: the null of K. Pearson (1897), Proc. Royal Society 60, 489-498, drawn with the stated uncertainties; p after Davison and Hinkley (1997), section 4.2.
 */
export function coupledNull(design: RelationDesign, which: number, errors: readonly SharedError[]): CoupledNull | null {
  const column = design.slopes[which];
  const [x, n] = [design.x[which], design.y.length];
  if (column === undefined || !x) return null;
  const size = Math.min(n, MOST);
  const at = Int32Array.from({ length: size }, (_, i) => Math.floor((i * n) / size));
  const [ownX, ownY] = [left(design, x, column, at), left(design, design.y, column, at)];
  const generator = generatorFromSeed(usualSeed).split("shared errors");
  const [drawnX, drawnY, deck] = [new Float64Array(size), new Float64Array(size), ownY.slice()];
  const words = new Uint32Array(size);
  const draws = Math.max(FEWEST, Math.min(MOST_DRAWS, Math.floor(WORK / size)));
  const drawn = Float64Array.from({ length: draws }, () => {
    drawToFront(deck, size, generator, words);
    drawnX.set(ownX);
    drawnY.set(deck);
    for (const error of errors)
      for (let i = 0; i < size; i++) {
        const [row, by] = [at[i] as number, quickNormalQuantile(generator.next() || 2 ** -54)];
        drawnX[i] = (drawnX[i] as number) + by * (error.x[row] as number);
        drawnY[i] = (drawnY[i] as number) + by * (error.y[row] as number);
      }
    return correlation(drawnX, drawnY);
  });
  const seen = correlation(ownX, ownY);
  const place = placeAmongDraws(drawn, seen);
  if (!Number.isFinite(seen) || !Number.isFinite(place.middle)) return null;
  return {
    seen,
    ...place,
    low: quantile(drawn, 0.025),
    high: quantile(drawn, 0.975),
    seed: usualSeed,
  };
}

import { quantile } from "../../numerics/index.ts";

/** Where what was seen lies among draws of a world without a law. */
export type PlaceAmongDraws = {
  /** The median of the draws. */
  readonly middle: number;
  /** Share of draws as far from the middle, what was seen counted as one of them, so that it is never 0. */
  readonly p: number;
};

/** Place of `seen` among drawn figures. drawn: at least one, finite. Source: Davison and Hinkley (1997), Bootstrap Methods and their Application, section 4.2. */
export function placeAmongDraws(drawn: Float64Array, seen: number): PlaceAmongDraws {
  const middle = quantile(drawn, 0.5);
  const far = drawn.filter((figure) => Math.abs(figure - middle) >= Math.abs(seen - middle)).length;
  return { middle, p: (far + 1) / (drawn.length + 1) };
}

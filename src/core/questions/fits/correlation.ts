import { crossProducts } from "./cross-products.ts";

/** Product-moment correlation, -1 to 1; NaN where one does not vary. */
export function correlation(x: Float64Array, y: Float64Array): number {
  const { xx, yy, xy } = crossProducts(x, y);
  return Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy)));
}

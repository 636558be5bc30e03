import { mean } from "../../numerics/index.ts";

/** Means of x and y, and sums of squares and products about them. */
export type CrossProducts = {
  readonly meanX: number;
  readonly meanY: number;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
};

/** Sums of squares and products about the means. x, y: of one length. Deviations are taken first, so offsets cost no digits. */
export function crossProducts(x: Float64Array, y: Float64Array): CrossProducts {
  const [meanX, meanY] = [mean(x), mean(y)];
  let [xx, yy, xy] = [0, 0, 0];
  for (let i = 0; i < x.length; i++) {
    const [dx, dy] = [(x[i] as number) - meanX, (y[i] as number) - meanY];
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  return { meanX, meanY, xx, yy, xy };
}

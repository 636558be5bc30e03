import { mean } from "../../numerics/index.ts";

/** Product-moment correlation, -1 to 1; NaN where one does not vary. Deviations are taken first, so offsets cost no digits. */
export function correlation(x: Float64Array, y: Float64Array): number {
  const [mx, my] = [mean(x), mean(y)];
  let [xx, yy, xy] = [0, 0, 0];
  for (let i = 0; i < x.length; i++) {
    const [dx, dy] = [(x[i] as number) - mx, (y[i] as number) - my];
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  return Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy)));
}

import { quantile } from "./quantile.ts";

/** Median: the middle order statistic, or the mean of the middle two. x: at least one finite number. NaN for none. */
export const median = (x: ArrayLike<number>): number => quantile(x, 0.5);

import { millsRatio, normalUpperTail } from "./normal-upper-tail.ts";

/** log P(Z > z), also where the tail itself is too small for a double. z: any real. Relative 1e-14. Source: see normalUpperTail. */
export const normalLogUpperTail = (z: number): number =>
  z > 5.6
    ? -0.5 * z * z - 0.9189385332046728 + Math.log(millsRatio(z))
    : z < -1
      ? Math.log1p(-normalUpperTail(-z))
      : Math.log(normalUpperTail(z));

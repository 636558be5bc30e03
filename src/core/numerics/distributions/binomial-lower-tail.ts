import { betaTails } from "./beta-tails.ts";

/** P(X <= k) for n trials of probability p, I_(1-p)(n - k, k + 1). k, n whole, n >= 0; p in [0, 1]. Relative 1e-12. Source: DLMF 8.17.5. */
export const binomialLowerTail = (k: number, n: number, p: number): number =>
  k < 0 ? 0 : k >= n ? 1 : betaTails(1 - p, p, n - Math.floor(k), Math.floor(k) + 1).lower;

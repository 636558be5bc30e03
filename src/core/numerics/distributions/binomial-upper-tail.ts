import { betaTails } from "./beta-tails.ts";

/** P(X > k) for n trials of probability p, I_p(k + 1, n - k). k, n whole, n >= 0; p in [0, 1]. Relative 1e-12. Source: DLMF 8.17.5. */
export const binomialUpperTail = (k: number, n: number, p: number): number =>
  k < 0 ? 1 : k >= n ? 0 : betaTails(p, 1 - p, Math.floor(k) + 1, n - Math.floor(k)).lower;

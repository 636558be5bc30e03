import { power } from "../base/index.ts";

/** Roots of cos x cosh x = 1, the bending shapes of a free bar: modes 1, 2, 3. Source: e.g. Rayleigh, The Theory of Sound, vol. 1, section 174. */
export const freeBarRoots = [4.730040744862704, 7.853204624095838, 10.995607838001671] as const;

/** 48 pi^2 / x^4 of the first mode: 0.94641465, what E = constant * mass f^2 L^3/(b h^3) needs. (ASTM E1876 prints 0.9465.) */
export const FREE_BAR_CONSTANT = (48 * Math.PI ** 2) / power(freeBarRoots[0], 4);

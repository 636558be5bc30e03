import { power } from "../base/index.ts";
import { sources } from "./sources.ts";
import { anyReal, woodMethod } from "./wood-method.ts";

/**
 * By what factor Young's modulus differs where a frequency differs by so many cents, all else equal: 2^(cents / 600), the square of the ratio of
 * frequencies. cents: any real. Source: bar and plate frequencies go with the square root of E.
 * @example centsModulusChange(10) -> 1.0116194
 */
export const centsModulusChange = (cents: number): number => power(2, cents / 600);

export const centsModulusChangeMethod = woodMethod({
  id: "cents-modulus-change",
  name: "change of modulus that a change of pitch means",
  inputs: { cents: anyReal("{cent}", "change of pitch") },
  fields: {
    modulusRatio: { meaning: "new modulus over the old", dimension: "1" },
    frequencyRatio: { meaning: "new frequency over the old", dimension: "1" },
  },
  source: sources.temperament,
  run: ({ cents }) => ({ modulusRatio: centsModulusChange(cents), frequencyRatio: power(2, cents / 1200) }),
});

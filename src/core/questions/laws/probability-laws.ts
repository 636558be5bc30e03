// The laws that the table of tails and quantiles knows, each by its two parameters a and b: both tails and both quantiles directly.
import {
  betaDensity,
  betaLowerTail,
  betaQuantile,
  betaUpperQuantile,
  betaUpperTail,
  binomialDensity,
  binomialLowerTail,
  binomialQuantileOf,
  binomialUpperTail,
  chiSquareDensity,
  chiSquareLowerTail,
  chiSquareQuantile,
  chiSquareUpperQuantile,
  chiSquareUpperTail,
  fDensity,
  fLowerTail,
  fQuantile,
  fUpperQuantile,
  fUpperTail,
  normalDensity,
  normalLogUpperTail,
  normalLowerTail,
  normalQuantile,
  normalUpperTail,
  tDensity,
  tLowerTail,
  tQuantile,
  tUpperTail,
} from "../../numerics/index.ts";
import type { Law } from "./law.ts";
import { noncentralTLaw } from "./noncentral-t-law.ts";
import { studentizedRangeLaw } from "./studentized-range-law.ts";

/** A law by its parameters; null where they are none of its own. */
export type LawOf = { readonly parameters: string; readonly law: (a: number, b: number) => Law | null };

const HUGE_DF = 1e15;
const positive = (value: number): boolean => value > 0 && value < Number.POSITIVE_INFINITY;

/** Normal with a mean and a standard deviation. */
export function normalLaw(mean: number, sd: number): Law {
  const z = (x: number): number => (x - mean) / sd;
  return {
    lower: (x) => normalLowerTail(z(x)),
    upper: (x) => normalUpperTail(z(x)),
    density: (x) => normalDensity(z(x)) / sd,
    quantile: (p) => mean + sd * normalQuantile(p),
    upperQuantile: (p) => mean - sd * normalQuantile(p),
    logUpper: (x) => normalLogUpperTail(z(x)),
    logLower: (x) => normalLogUpperTail(-z(x)),
  };
}

const tLaw = (df: number): Law =>
  df >= HUGE_DF
    ? normalLaw(0, 1)
    : {
        lower: (x) => tLowerTail(x, df),
        upper: (x) => tUpperTail(x, df),
        density: (x) => tDensity(x, df),
        quantile: (p) => tQuantile(p, df),
        upperQuantile: (p) => -tQuantile(p, df),
      };

const chiSquareLaw = (df: number, scale = 1): Law => ({
  lower: (x) => chiSquareLowerTail(x * scale, df),
  upper: (x) => chiSquareUpperTail(x * scale, df),
  density: (x) => scale * chiSquareDensity(x * scale, df),
  quantile: (p) => chiSquareQuantile(p, df) / scale,
  upperQuantile: (p) => chiSquareUpperQuantile(p, df) / scale,
});

const fLaw = (df1: number, df2: number): Law =>
  df2 === Number.POSITIVE_INFINITY
    ? chiSquareLaw(df1, df1)
    : {
        lower: (x) => fLowerTail(x, df1, df2),
        upper: (x) => fUpperTail(x, df1, df2),
        density: (x) => fDensity(x, df1, df2),
        quantile: (p) => fQuantile(p, df1, df2),
        upperQuantile: (p) => fUpperQuantile(p, df1, df2),
      };

const inUnit = (x: number): number => Math.min(1, Math.max(0, x));
const betaLaw = (a: number, b: number): Law => ({
  lower: (x) => betaLowerTail(inUnit(x), a, b),
  upper: (x) => betaUpperTail(inUnit(x), a, b),
  density: (x) => betaDensity(x, a, b),
  quantile: (p) => betaQuantile(p, a, b),
  upperQuantile: (p) => betaUpperQuantile(p, a, b),
});

const binomialLaw = (n: number, probability: number): Law => {
  const last = probability === 0 ? 0 : n;
  return {
    lower: (x) => binomialLowerTail(Math.floor(x), n, probability),
    upper: (x) => binomialUpperTail(Math.floor(x), n, probability),
    density: (x) => (Number.isInteger(x) && x >= 0 && x <= n ? binomialDensity(x, n, probability) : 0),
    quantile: (p) => (p >= 1 ? last : binomialQuantileOf(p, 1 - p, n, probability)),
    upperQuantile: (p) => (p <= 0 ? last : binomialQuantileOf(1 - p, p, n, probability)),
  };
};

/** The laws by name. */
export const probabilityLaws: Readonly<Record<string, LawOf>> = {
  normal: {
    parameters: "a, b = mean and standard deviation; b 0 or left out: 0 and 1",
    law: (a, b) =>
      b > 0 && Number.isFinite(a) ? normalLaw(a, b) : b < 0 || (a !== 0 && !Number.isNaN(a)) ? null : normalLaw(0, 1),
  },
  t: { parameters: "a = degrees of freedom, above 0", law: (a) => (a > 0 ? tLaw(a) : null) },
  f: {
    parameters: "a, b = degrees of freedom, above 0",
    law: (a, b) => (positive(a) && b > 0 ? fLaw(a, b) : null),
  },
  chi2: { parameters: "a = degrees of freedom, above 0", law: (a) => (positive(a) ? chiSquareLaw(a) : null) },
  beta: {
    parameters: "a, b = shapes, above 0",
    law: (a, b) => (positive(a) && positive(b) ? betaLaw(a, b) : null),
  },
  binomial: {
    parameters: "a = trials, a whole number; b = probability, 0 to 1",
    law: (a, b) => (Number.isInteger(a) && a >= 0 && b >= 0 && b <= 1 ? binomialLaw(a, b) : null),
  },
  noncentral_t: {
    parameters: "a = degrees of freedom, above 0; b = noncentrality",
    law: (a, b) =>
      a > 0 && Number.isFinite(b)
        ? b === 0
          ? tLaw(a)
          : a === Number.POSITIVE_INFINITY
            ? normalLaw(b, 1)
            : noncentralTLaw(a, b)
        : null,
  },
  studentized_range: {
    parameters: "a = number of means, a whole number of 2 or more; b = degrees of freedom, above 0",
    law: (a, b) => (Number.isInteger(a) && a >= 2 && b > 0 ? studentizedRangeLaw(a, b) : null),
  },
};

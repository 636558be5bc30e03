import { declined, type Method, type Outcome, succeeded } from "../../base/index.ts";
import type { Law } from "../laws/law.ts";
import { probabilityLaws } from "../laws/probability-laws.ts";

/** A logarithm of a tail: by the tail where it is small, by the other where it is not. NaN where the tail is below every double. */
const logarithm = (tail: number, other: number): number =>
  tail === 0 ? Number.NaN : tail < 0.5 ? Math.log(tail) : Math.log1p(-other);
const isShare = (p: number): boolean => p >= 0 && p <= 1;

/** What is asked of a law at x, by name; NaN where x is not what the function takes. */
const functions: Readonly<Record<string, (law: Law, x: number) => number>> = {
  cdf: (law, x) => law.lower(x),
  sf: (law, x) => law.upper(x),
  density: (law, x) => law.density?.(x) ?? Number.NaN,
  quantile: (law, x) => (isShare(x) ? law.quantile(x) : Number.NaN),
  isf: (law, x) => (isShare(x) ? law.upperQuantile(x) : Number.NaN),
  logsf: (law, x) => law.logUpper?.(x) ?? logarithm(law.upper(x), law.lower(x)),
  logcdf: (law, x) => law.logLower?.(x) ?? logarithm(law.lower(x), law.upper(x)),
  logdensity: (law, x) => Math.log(law.density?.(x) ?? Number.NaN),
};
const otherNames: Readonly<Record<string, string>> = {
  pmf: "density",
  pdf: "density",
  logpmf: "logdensity",
  logpdf: "logdensity",
  ppf: "quantile",
};
const names = [...Object.keys(functions), ...Object.keys(otherNames)];

/** A list, or a single value for every item. */
function listOf<T>(given: unknown, count: number, is: (value: unknown) => value is T, absent: T): readonly T[] | null {
  if (given === undefined) return Array.from({ length: count }, () => absent);
  const list: readonly unknown[] | null =
    given instanceof Float64Array ? [...given] : Array.isArray(given) ? given : null;
  if (list === null) return is(given) ? Array.from({ length: count }, () => given) : null;
  return list.length === count && list.every(is) ? list : null;
}
const isNumber = (value: unknown): value is number => typeof value === "number";
const isText = (value: unknown): value is string => typeof value === "string";

/** A number as JSON can say it: an infinite one as its name. */
const sayable = (value: number): number | string =>
  Math.abs(value) === Number.POSITIVE_INFINITY ? String(value) : value;

function valueAt(
  name: string,
  law: Law | null,
  x: number,
  place: string,
  parameters: string,
): Outcome<number | string> {
  const made = functions[otherNames[name] ?? name];
  if (!made)
    return declined("wrong-kind", {
      column: place,
      found: `"${name.slice(0, 40)}"`,
      needed: `one of ${names.join(", ")}`,
    });
  if (!law) return declined("out-of-domain", { name: place, needed: parameters });
  const value = Number.isNaN(x) ? x : made(law, x);
  return Number.isNaN(value)
    ? declined("out-of-domain", {
        name: `x, ${place}`,
        needed: "a number, for a quantile one from 0 to 1, and a law that has what is asked",
      })
    : succeeded(sayable(value));
}

/**
 * Tails, densities and quantiles of the laws that the methods rest on, item by item. cdf: P(X <= x); sf: P(X > x), never 1 - cdf; density, for a
 * binomial law the probability of x; quantile: the x with P(X <= x) = p; isf: with P(X > x) = p; logsf, logcdf: their logarithms.
 * An infinite value is given as the text "Infinity". Relative 1e-12 of the closed laws, 1e-9 of the noncentral t, 1e-7 of the studentized range.
 * Source: DLMF 8.17, 8.7 and 7.9; Loader (2000); Copenhaver and Holland (1988) for the range.
 */
export const distribution: Method = {
  id: "distribution",
  name: "Tails, densities and quantiles of a probability law",
  answers: "law",
  needs: { rows: 1 },
  inputs: {
    distribution: { kind: "choice", choices: Object.keys(probabilityLaws), meaning: "the law" },
    function: { kind: "labels", meaning: `what is asked, one for each x: ${names.join(", ")}` },
    x: { kind: "quantities", meaning: "where; for quantile and isf a probability" },
    a: { kind: "quantities", optional: true, meaning: "first parameter: degrees of freedom, shape, trials, means" },
    b: { kind: "quantities", optional: true, meaning: "second parameter: degrees of freedom, shape, probability" },
  },
  fields: {
    value: { meaning: "the value of each item, in their order" },
    parameters: { meaning: "what a and b are for this law" },
  },
  source: { citation: "DLMF 8.17, 8.7 and 7.9; Loader (2000); Copenhaver and Holland (1988)", basis: "published" },
  run: ({ distribution: name, function: asked, x: places, a, b }) => {
    const record = probabilityLaws[String(name)];
    if (!record)
      return declined("wrong-kind", {
        column: "distribution",
        found: "no law known here",
        needed: `one of ${Object.keys(probabilityLaws).join(", ")}`,
      });
    const count = Array.isArray(places) || places instanceof Float64Array ? places.length : 1;
    const [what, x] = [listOf(asked, count, isText, "cdf"), listOf(places, count, isNumber, Number.NaN)];
    const [first, second] = [listOf(a, count, isNumber, Number.NaN), listOf(b, count, isNumber, Number.NaN)];
    if (count === 0) return declined("too-few-records", { have: 0, need: 1 });
    if (!what || !x || !first || !second)
      return declined("out-of-domain", { name: "function, a, b, x", needed: "lists of one length, without gaps" });
    const values: (number | string)[] = [];
    for (let i = 0; i < count; i++) {
      const law = record.law(first[i] ?? Number.NaN, second[i] ?? Number.NaN);
      const value = valueAt(what[i] ?? "", law, x[i] ?? Number.NaN, `item ${i + 1}`, record.parameters);
      if (!value.ok) return value;
      values.push(value.value);
    }
    return succeeded({ value: values, parameters: record.parameters });
  },
};

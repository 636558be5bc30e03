import { declined, type Outcome, succeeded } from "../../base/index.ts";
import { type Correlated, choleskyFactor, compensatedSum, covarianceOf } from "../../numerics/index.ts";
import { isEntry, type KnownInput } from "./known-inputs.ts";

/** Pairs that are correlated out of a list of {between: [a, b], coefficient}; by name. */
export function correlatedPairs(list: unknown, names: readonly string[]): Outcome<readonly Correlated[]> {
  if (list === undefined || list === null) return succeeded([]);
  const wrong = () =>
    declined("out-of-domain", {
      name: "correlations",
      needed: `a list of {between: [name, name], coefficient from -1 to 1}, two different names of ${names.join(", ")}`,
    });
  if (!Array.isArray(list)) return wrong();
  const pairs: Correlated[] = [];
  for (const entry of list as readonly unknown[]) {
    const between = isEntry(entry) ? entry.between : null;
    const coefficient = isEntry(entry) ? entry.coefficient : null;
    if (!Array.isArray(between) || between.length !== 2) return wrong();
    const [first, second] = [names.indexOf(String(between[0])), names.indexOf(String(between[1]))];
    if (first < 0 || second < 0 || first === second) return wrong();
    if (typeof coefficient !== "number" || !(Math.abs(coefficient) <= 1)) return wrong();
    pairs.push({ first, second, coefficient });
  }
  return succeeded(pairs);
}

/** Whether all readings were taken together: as many of each. */
export const isSimultaneous = (known: readonly KnownInput[]): boolean =>
  known.length > 1 &&
  known.every(({ readings }) => readings !== null && readings.length === known[0]?.readings?.length);

/** Covariance of two means of readings taken together: sum (x - mean)(y - mean) / (n (n - 1)). Source: JCGM 100:2008, equation 17. */
function covarianceOfMeans(x: Float64Array, y: Float64Array, meanX: number, meanY: number): number {
  const n = x.length;
  const products = x.map((one, i) => (one - meanX) * ((y[i] as number) - meanY));
  return compensatedSum(products) / (n * (n - 1));
}

/** Covariance of the inputs: stated correlations, and those of readings that were taken together. */
export function knownCovariance(
  known: readonly KnownInput[],
  stated: readonly Correlated[],
  together: boolean,
): Outcome<Float64Array> {
  const n = known.length;
  const covariance = covarianceOf(
    known.map(({ uncertainty }) => uncertainty),
    stated,
  );
  if (together)
    for (const [i, one] of known.entries())
      for (const [j, other] of known.entries())
        if (i !== j && one.readings && other.readings)
          covariance[i * n + j] = covarianceOfMeans(one.readings, other.readings, one.law.mean, other.law.mean);
  if (stated.length > 0 && !choleskyFactor(covariance)) return declined("contradicting-correlations", {});
  return succeeded(covariance);
}

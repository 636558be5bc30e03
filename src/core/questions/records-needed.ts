import { noncentralTUpperTail, tQuantile } from "../numerics/index.ts";

const MOST = 100_000;

/** Power of a two-sided t test at level alpha (0.05 unless given) with `records` records, when the noncentrality is `noncentrality`. */
export function powerOfT(noncentrality: number, degreesOfFreedom: number, alpha = 0.05): number {
  const critical = -tQuantile(alpha / 2, degreesOfFreedom);
  return (
    noncentralTUpperTail(critical, degreesOfFreedom, noncentrality) +
    noncentralTUpperTail(critical, degreesOfFreedom, -noncentrality)
  );
}

/**
 * How many records in all an effect would need to be seen with the wanted power, if it is as large as it looks: the noncentrality
 * estimate / standard error grows as sqrt(n - 1) while spread and scatter stay. ratio: estimate / standard error now; records: now;
 * parameters: coefficients fitted. Returns a whole number >= records, or null when 100,000 would not do.
 * Source: J. Cohen (1988), Statistical Power Analysis, chapter 9, by the noncentral t law; power at the estimate is a planning figure only.
 */
export function recordsNeeded(
  ratio: number,
  records: number,
  parameters: number,
  power = 0.8,
  alpha = 0.05,
): number | null {
  const reaches = (n: number) =>
    powerOfT(Math.abs(ratio) * Math.sqrt((n - 1) / (records - 1)), n - parameters, alpha) >= power;
  if (!(Math.abs(ratio) > 0) || !reaches(MOST)) return null;
  let low = Math.max(records, parameters + 1);
  if (reaches(low)) return low;
  let high = low * 2;
  while (!reaches(high)) [low, high] = [high, high * 2];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (reaches(middle)) high = middle;
    else low = middle;
  }
  return high;
}

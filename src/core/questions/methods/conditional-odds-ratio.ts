import { bracketedRoot, hypergeometricDensity } from "../../numerics/index.ts";

export type ConditionalOddsRatio = { readonly estimate: number; readonly low: number; readonly high: number };

/** Tails and mean of the count under odds ratio exp(logOdds): the noncentral hypergeometric law, its weights scaled by the largest. */
function noncentral(counts: Float64Array, logs: Float64Array, seen: number, logOdds: number) {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < counts.length; i++) most = Math.max(most, (logs[i] as number) + logOdds * (counts[i] as number));
  let [all, mean, upper, lower] = [0, 0, 0, 0];
  for (let i = 0; i < counts.length; i++) {
    const count = counts[i] as number;
    const weight = Math.exp((logs[i] as number) + logOdds * count - most);
    all += weight;
    mean += count * weight;
    if (count >= seen) upper += weight;
    if (count <= seen) lower += weight;
  }
  return { mean: mean / all, upper: upper / all, lower: lower / all };
}

/** Logarithm of an odds ratio at which a rising function is zero; the bracket grows until it holds it. */
function solved(f: (logOdds: number) => number): number {
  let reach = 1;
  while (f(-reach) > 0 || f(reach) < 0) reach *= 2;
  return Math.exp(bracketedRoot(f, -reach, reach));
}

/**
 * Odds ratio of a 2 x 2 table with both margins given, by maximum likelihood, and its exact interval: each limit leaves (1 - level)/2 in a tail.
 * a, b / c, d: whole counts, no margin zero. Infinity and 0 where a cell that decides is empty. Relative 1e-12.
 * Source: Fisher (1935); Cornfield (1956), Proc. Third Berkeley Symposium 4, 135-148.
 */
export function conditionalOddsRatio(a: number, b: number, c: number, d: number, level: number): ConditionalOddsRatio {
  const [first, last] = [Math.max(0, a - d), Math.min(a + b, a + c)];
  const counts = Float64Array.from({ length: last - first + 1 }, (_, i) => first + i);
  const logs = counts.map((count) => Math.log(hypergeometricDensity(count, a + b, c + d, a + c)));
  const tail = (1 - level) / 2;
  const at = (logOdds: number) => noncentral(counts, logs, a, logOdds);
  return {
    estimate: a === first ? 0 : a === last ? Number.POSITIVE_INFINITY : solved((logOdds) => at(logOdds).mean - a),
    low: a === first ? 0 : solved((logOdds) => at(logOdds).upper - tail),
    high: a === last ? Number.POSITIVE_INFINITY : solved((logOdds) => tail - at(logOdds).lower),
  };
}

/**
 * Deviance part x log(x / m) + m - x, without cancellation where x is near m. x >= 0, m > 0. Result >= 0, relative 1e-15.
 * Source: C. Loader (2000), function bd0, with the series in v = (x - m) / (x + m).
 */
export function poissonDeviance(x: number, m: number): number {
  if (x === 0) return m;
  if (Math.abs(x - m) >= 0.1 * (x + m)) return x * Math.log(x / m) + m - x;
  const v = (x - m) / (x + m);
  let sum = (x - m) * v;
  let term = 2 * x * v;
  for (let j = 1; j < 1000; j++) {
    term *= v * v;
    const next = sum + term / (2 * j + 1);
    if (next === sum) return next;
    sum = next;
  }
  return sum;
}

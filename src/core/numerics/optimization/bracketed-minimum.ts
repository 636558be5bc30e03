export type Minimum = { readonly at: number; readonly value: number; readonly converged: boolean };

/**
 * Minimum of f between low and high by golden section. f: continuous, with one valley between low and high. Result: the place, to `tolerance`
 * relative to the first interval (no better than about 1e-8 of it, where f is flat to rounding), and whether that was reached in 200 steps.
 * Source: R. P. Brent (1973), Algorithms for Minimization without Derivatives, chapter 5.
 * @example bracketedMinimum((x) => (x - 2) ** 2, 0, 5).at // 2
 */
export function bracketedMinimum(f: (x: number) => number, low: number, high: number, tolerance = 1e-10): Minimum {
  const ratio = (Math.sqrt(5) - 1) / 2;
  const width = tolerance * (high - low);
  let [a, b] = [low, high];
  let [c, d] = [b - ratio * (b - a), a + ratio * (b - a)];
  let [fc, fd] = [f(c), f(d)];
  for (let step = 0; step < 200 && b - a > width; step++) {
    if (fc <= fd) {
      [b, d, fd] = [d, c, fc];
      c = b - ratio * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + ratio * (b - a);
      fd = f(d);
    }
  }
  const at = (a + b) / 2;
  return { at, value: f(at), converged: b - a <= width };
}

/**
 * Nodes and weights of Gauss and Legendre's rule on [-1, 1]: exact for polynomials of degree 2n - 1. n: 1 to about 200.
 * Newton's method on the recurrence, at most 30 steps, until the step is below 1e-16. Relative 1e-14.
 * Source: Press et al., Numerical Recipes, section 4.6; Abramowitz and Stegun 25.4.29.
 * @example gaussLegendreNodes(2).nodes // [-0.5773502691896258, 0.5773502691896258]
 */
export function gaussLegendreNodes(n: number): { readonly nodes: Float64Array; readonly weights: Float64Array } {
  const nodes = new Float64Array(n);
  const weights = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let round = 0; round < 30; round++) {
      let [last, value] = [0, 1];
      for (let k = 1; k <= n; k++) [last, value] = [value, ((2 * k - 1) * x * value - (k - 1) * last) / k];
      slope = (n * (x * value - last)) / (x * x - 1);
      const step = value / slope;
      x -= step;
      if (Math.abs(step) < 1e-16) break;
    }
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  return { nodes, weights };
}

/**
 * Which product of polynomials each mode is most like: (2,0) bends along the grain, (0,2) across, (1,1) twists.
 * shapes: shares of the products in each mode, lowest mode first. degrees: of the products.
 * Each product is given once, the largest share first, so that a ring and a cross, which are alike, still get a name each.
 */
export function modeDegrees(
  shapes: readonly Float64Array[],
  degrees: readonly (readonly [number, number])[],
): readonly (readonly [along: number, across: number])[] {
  const pairs = shapes.flatMap((shape, mode) =>
    degrees.map((degree, at) => ({ mode, at, degree, share: (shape[at] ?? 0) ** 2 })),
  );
  pairs.sort((one, other) => other.share - one.share);
  const found: (readonly [number, number])[] = [];
  const given = new Set<number>();
  for (const { mode, at, degree } of pairs)
    if (found[mode] === undefined && !given.has(at)) {
      found[mode] = degree;
      given.add(at);
    }
  return found;
}

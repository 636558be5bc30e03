import fc from "fast-check";
import { expect, it } from "vitest";
import { ascendingEigen, symmetricEigen } from "../../../src/core/numerics/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

const square = (n: number, at: (i: number, j: number) => number) =>
  Float64Array.from({ length: n * n }, (_, k) =>
    at(Math.min(Math.floor(k / n), k % n), Math.max(Math.floor(k / n), k % n)),
  );

it("knows the spectrum of the chain of equal springs: 2 - 2 cos(k pi/(n+1))", () => {
  // e.g. Strang, Introduction to Applied Mathematics (1986), section 5.3
  const n = 40;
  const { values } = ascendingEigen(
    square(n, (i, j) => (i === j ? 2 : j - i === 1 ? -1 : 0)),
    n,
  );
  values.forEach((value, k) => {
    closeTo(value, 2 - 2 * Math.cos(((k + 1) * Math.PI) / (n + 1)), 1e-14, { scale: 4 });
  });
});

law(
  "finds what rotations find, with vectors of length one that solve the equation",
  [
    fc.integer({ min: 1, max: 14 }),
    fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 196, maxLength: 196 }),
  ],
  (n, entries) => {
    const matrix = square(n, (i, j) => entries[i * 14 + j] ?? 0);
    const { values, vectors } = ascendingEigen(matrix, n);
    const rotated = [...symmetricEigen(Array.from({ length: n }, (_, i) => matrix.slice(i * n, (i + 1) * n))).values];
    rotated.sort((one, other) => one - other);
    values.forEach((value, k) => {
      const vector = vectors[k] ?? new Float64Array(0);
      closeTo(value, rotated[k] ?? Number.NaN, 1e-13, { scale: 30 });
      closeTo(Math.hypot(...vector), 1, 1e-13);
      for (let i = 0; i < n; i++) {
        const left = vector.reduce((sum, one, j) => sum + (matrix[i * n + j] ?? 0) * one, 0);
        closeTo(left, value * (vector[i] ?? 0), 1e-13, { scale: 30 });
      }
    });
  },
);

it("takes the empty and the zero matrix as they are", () => {
  expect(ascendingEigen(new Float64Array(0), 0).values).toHaveLength(0);
  expect([...ascendingEigen(new Float64Array(9), 3).values]).toEqual([0, 0, 0]);
});

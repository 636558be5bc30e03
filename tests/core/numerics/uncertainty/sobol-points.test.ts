import { expect, it } from "vitest";
import { generatorFromSeed, SOBOL_COORDINATES, sobolPoints } from "../../../../src/core/numerics/index.ts";

const points = (coordinate: number, count: number, seed = 1) => {
  const list = new Float64Array(count);
  sobolPoints(coordinate, generatorFromSeed(seed).split(`${coordinate}`))(list, count);
  return list;
};

it("puts one of 1024 points into each of 1024 equal parts, in every coordinate", () => {
  for (let c = 0; c < SOBOL_COORDINATES; c++) {
    const seen = new Set(Array.from(points(c, 1024), (u) => Math.floor(u * 1024)));
    expect(seen.size, `coordinate ${c}`).toBe(1024);
  }
});
it("fills the squares of every pair of coordinates evenly: 2^14 points in 16 x 16 squares, 64 each within a quarter", () => {
  const all = Array.from({ length: SOBOL_COORDINATES }, (_, c) => points(c, 2 ** 14));
  for (let a = 0; a < SOBOL_COORDINATES; a++)
    for (let b = 0; b < a; b++) {
      const squares = new Int32Array(256);
      for (let i = 0; i < 2 ** 14; i++) {
        const at = Math.floor((all[a]?.[i] ?? 0) * 16) * 16 + Math.floor((all[b]?.[i] ?? 0) * 16);
        squares[at] = (squares[at] ?? 0) + 1;
      }
      expect(Math.max(...squares), `${a}, ${b}`).toBeLessThanOrEqual(80);
      expect(Math.min(...squares), `${a}, ${b}`).toBeGreaterThanOrEqual(48);
    }
});
it("is another shift with another seed, and the same with the same", () => {
  expect(points(3, 8, 1)).toEqual(points(3, 8, 1));
  expect(points(3, 8, 1)).not.toEqual(points(3, 8, 2));
});

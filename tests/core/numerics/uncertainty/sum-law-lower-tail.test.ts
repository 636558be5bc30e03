import { describe, expect, it } from "vitest";
import { normalLowerTail, sumLawLowerTail } from "../../../../src/core/numerics/index.ts";
import { closeTo } from "../../../support/close-to.ts";

const root3 = Math.sqrt(3);

describe("the law of a sum", () => {
  it("is the normal law where nothing else is in it", () =>
    expect(sumLawLowerTail(1.2, 0.7, [])).toBe(normalLowerTail(1.2 / 0.7)));
  it("is straight for one rectangle, and a triangle for two", () => {
    closeTo(sumLawLowerTail(0.3, 0, [2]) ?? 0, 2.3 / 4, 1e-15);
    closeTo(sumLawLowerTail(-1.5, 0, [1, 1]) ?? 0, 0.5 ** 2 / 8, 1e-14);
  });
  it("is the printed 97.5 % point of four rectangles of unit standard deviation (JCGM 101, table 3)", () =>
    closeTo(sumLawLowerTail(3.88, 0, [root3, root3, root3, root3]) ?? 0, 0.975, 1e-4));
  it("with a small normal part comes close to the rectangles alone, by another way of computing", () => {
    const rectangles = [1, 0.7, 2, 0.4];
    for (const x of [-3.2, -1, 0.2, 1.7, 3])
      closeTo(sumLawLowerTail(x, 1e-3, rectangles) ?? 0, sumLawLowerTail(x, 0, rectangles) ?? 1, 2e-5);
  });
  it("of a normal and a rectangle is their convolution (midpoints)", () => {
    const [x, sd, a, parts] = [0.8, 0.5, 1.1, 4000];
    let sum = 0;
    for (let k = 0; k < parts; k++) sum += normalLowerTail((x - a * ((2 * k + 1) / parts - 1)) / sd) / parts;
    closeTo(sumLawLowerTail(x, sd, [a]) ?? 0, sum, 1e-7);
  });
  it("is withheld where digits cancel", () =>
    expect(sumLawLowerTail(0.5, 0, [1000, 1e-3, 1e-3, 1e-3, 1e-3])).toBeNull());
});

import { expect, it } from "vitest";
import { repeatability } from "../../../src/core/rig/repeatability.ts";
import { closeTo } from "../../support/close-to.ts";

it("pools the squares within sets over their degrees of freedom (by hand: 2 + 8 over 1 + 2)", () => {
  const found = repeatability(Float64Array.from([1, 3, 10, 12, 14, 99]), ["a", "a", "b", "b", "b", "c"]);
  closeTo(found?.standardDeviation ?? 0, Math.sqrt(10 / 3), 1e-12);
  expect(found).toMatchObject({ degreesOfFreedom: 3, sets: 2 });
});

it("gives the repeatability of ISO 5725-2:1994, annex B, example 1, level 1 to the printed figure (s_r 0.015)", () => {
  const labs = [
    [0.71, 0.71, 0.7, 0.71],
    [0.69, 0.67, 0.68],
    [0.66, 0.65, 0.69],
    [0.67, 0.65, 0.66],
    [0.7, 0.69, 0.66, 0.71, 0.69],
    [0.73, 0.74, 0.73],
    [0.71, 0.71, 0.69],
    [0.7, 0.65, 0.68],
  ];
  const found = repeatability(
    Float64Array.from(labs.flat()),
    labs.flatMap((own, lab) => own.map(() => lab)),
  );
  expect(found?.standardDeviation.toFixed(3)).toBe("0.015");
});

it("is unknown where nothing was read twice", () => {
  expect(repeatability(Float64Array.from([1, 2, 3]), ["a", "b", "c"])).toBeNull();
});

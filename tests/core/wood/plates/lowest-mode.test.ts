import fc from "fast-check";
import { expect, it } from "vitest";
import { classModes } from "../../../../src/core/wood/plates/class-modes.ts";
import { legendreIntegrals } from "../../../../src/core/wood/plates/legendre-integrals.ts";
import { lowestMode } from "../../../../src/core/wood/plates/lowest-mode.ts";
import { shearClass } from "../../../../src/core/wood/plates/shear-class.ts";
import { shearWeights } from "../../../../src/core/wood/plates/shear-weights.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

law(
  "the lowest mode by itself is the first of all modes, its shape too",
  [between(0.3, 0.7), between(0.15, 0.45), between(0.002, 0.006), between(5, 18), between(0.3, 2), between(0.4, 1.2)],
  (length, width, thickness, along, across, shear) => {
    const plate = {
      length,
      width,
      thickness,
      density: 410,
      along: along * 1e9,
      across: across * 1e9,
      shear: shear * 1e9,
      poisson: 0.3,
    };
    const parity = shearClass(legendreIntegrals(8), 8, 1, 1, plate);
    const weights = shearWeights(plate, { shearAlong: 0.7e9, shearAcross: 0.04e9, coefficient: 5 / 6 });
    const [one, all] = [lowestMode(parity, weights), classModes(parity, weights)];
    expect(one.shapes).toHaveLength(1);
    closeTo(one.squares[0]!, all.squares[0]!, 1e-9);
    const same = one.shapes[0]!.reduce((sum, share, i) => sum + share * all.shapes[0]![i]!, 0);
    closeTo(Math.abs(same), 1, 1e-10);
  },
  30,
);

it("a class with rigid motions, which has no factor, is solved whole", () => {
  const plate = {
    length: 0.5,
    width: 0.2,
    thickness: 0.004,
    density: 400,
    along: 1e10,
    across: 1e9,
    shear: 7e8,
    poisson: 0.3,
  };
  const parity = shearClass(legendreIntegrals(6), 6, 0, 0, plate);
  const weights = shearWeights(plate, { shearAlong: 0.7e9, shearAcross: 0.04e9, coefficient: 5 / 6 });
  expect(lowestMode(parity, weights)).toEqual(classModes(parity, weights));
});

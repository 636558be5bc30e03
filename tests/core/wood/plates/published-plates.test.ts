// Plates whose frequencies others have published or that a closed form gives.
import { expect, it } from "vitest";
import {
  isotropicPlateParameters,
  plateModes,
  plateModuli,
  simplySupportedFrequency,
  targetThickness,
  woodMethods,
} from "../../../../src/core/wood/index.ts";
import { closeTo } from "../../../support/close-to.ts";

const spruce = {
  length: 0.55,
  width: 0.205,
  thickness: 0.004,
  density: 410,
  along: 11.2e9,
  across: 0.87e9,
  shear: 0.72e9,
  poisson: 0.37,
};
const methodOf = (id: string) => {
  const method = woodMethods.find((one) => one.id === id);
  if (!method) throw new Error(id);
  return method;
};

it("has the frequencies of the free square plate of Poisson ratio 0.3", () => {
  // 24 x 24 Legendre products and 18 x 18 conforming Hermite elements by another program: 13.4682, 19.5961, 24.2702, 34.8009 twice, 61.0932.
  const wanted = [13.4682, 19.5961, 24.2702, 34.8009, 34.8009, 61.0932];
  isotropicPlateParameters(0.3).forEach((lambda, at) => {
    closeTo(lambda, wanted[at] ?? Number.NaN, 1e-5);
  });
});
it("lies just below the published upper bounds of 36 beam products, by up to one per cent", () => {
  // Leissa, J. Sound Vib. 31(3) (1973) 257-293, completely free square plate, Poisson ratio 0.3: upper bounds by Ritz's method.
  const bounds = [13.489, 19.789, 24.432, 35.024, 35.024];
  isotropicPlateParameters(0.3)
    .slice(0, 5)
    .forEach((lambda, at) => {
      const bound = bounds[at] ?? Number.NaN;
      expect(lambda).toBeLessThan(bound);
      expect(lambda).toBeGreaterThan(0.99 * bound);
    });
});
it("names the shapes of a soundboard half in their order", () =>
  expect(plateModes(spruce).lowest.map(({ shape }) => shape)).toEqual([
    "twist",
    "long1",
    "a1l2",
    "cross1",
    "a2l1",
    "long2",
  ]));
it("is the plate that target-thickness means", () => {
  const { length, width, density, along, across, shear, poisson, thickness } = spruce;
  const frequency = simplySupportedFrequency(spruce, 1, 1);
  closeTo(targetThickness(frequency, length, width, density, along, across, shear, poisson), thickness, 1e-12);
});

it("asks for swapped axes instead of giving a wood that is stiffer across", () => {
  const { long, cross, twist } = plateModes(spruce);
  const swapped = plateModuli(spruce, { long: cross / 4, cross: 4 * cross, twist });
  expect(swapped.ok ? "" : swapped.refusal.code).toBe("axes-swapped");
  closeTo(long, 71.0465, 1e-5);
});
it("declines two bendings closer than any such plate has them, and warns of them before all else is known", () => {
  const plate = { ...spruce, length: 0.38, width: 0.2, thickness: 0.003 };
  const impossible = plateModuli(plate, { long: 118, cross: 119, twist: 56 });
  expect(impossible.ok ? "" : impossible.refusal.code).toBe("modes-too-close");
  const method = methodOf("plate-moduli");
  const asked = { length: 0.38, width: 0.2, long: 118, cross: 119 };
  const found = method.run(asked);
  if (!found.ok) throw new Error(found.refusal.code);
  expect(found.value).not.toHaveProperty("along");
  expect(method.cautions?.(asked, found.value).map(({ code }) => code)).toEqual(["modes-mixed"]);
  const apart = method.run({ ...asked, cross: 200 });
  expect(apart.ok ? null : apart.refusal.facts).toMatchObject({ name: "thickness" });
});
it("warns where the cross bending is not the second of the even modes", () => {
  const asked = { length: 0.6, width: 0.1, long: 60, cross: 400 };
  expect(
    methodOf("plate-moduli")
      .cautions?.(asked, {})
      .map(({ code }) => code),
  ).toEqual(["cross-not-second"]);
});

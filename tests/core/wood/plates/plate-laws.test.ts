// Laws that a free plate obeys whatever its wood: forward and back, turned round, scaled, with more polynomials.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  barFrequency,
  type Plate,
  plateModes,
  plateModesWithShear,
  plateModuli,
} from "../../../../src/core/wood/index.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const woods = {
  spruce: { density: 410, along: 11e9, across: 0.85e9, shear: 0.75e9, poisson: 0.37 },
  cedar: { density: 350, along: 8e9, across: 0.65e9, shear: 0.7e9, poisson: 0.38 },
  rosewood: { density: 830, along: 13e9, across: 2.3e9, shear: 1.6e9, poisson: 0.36 },
  maple: { density: 650, along: 12.6e9, across: 1.66e9, shear: 1.4e9, poisson: 0.42 },
};
const wood = fc
  .tuple(
    fc.constantFrom(...Object.values(woods)),
    between(0.75, 1.3),
    between(0.75, 1.3),
    between(0.75, 1.3),
    between(0.8, 1.2),
  )
  .map(([one, along, across, shear, density]) => ({
    ...one,
    along: one.along * along,
    across: one.across * across,
    shear: one.shear * shear,
    density: one.density * density,
  }));
const plates: fc.Arbitrary<Plate> = fc
  .tuple(wood, between(0.25, 0.65), between(0.12, 0.45), between(0.002, 0.005))
  .map(([one, length, width, thickness]) => ({ ...one, length, width, thickness }));
/** Cut so that the two bendings mix, to a few hundredths of the ratio at which they do most. */
const mixedPlates: fc.Arbitrary<Plate> = fc
  .tuple(plates, between(0.96, 1.04))
  .map(([plate, off]) => ({ ...plate, width: (plate.length / (plate.along / plate.across) ** 0.25) * off }));

const comesBack = (plate: Plate, relative: number) => {
  const found = plateModuli(plate, plateModes(plate));
  if (!found.ok) throw new Error(found.refusal.code);
  closeTo(found.value.along, plate.along, relative);
  closeTo(found.value.across, plate.across, relative);
  closeTo(found.value.shear, plate.shear, relative);
  expect(found.value.steps).toBeLessThan(8);
};

describe("a free thin plate", () => {
  law("gives its moduli back from its frequencies", [plates], (plate) => comesBack(plate, 1e-8), 100);
  // Where the two frequencies are closest, moduli move as the root of a frequency error: eight digits of those are four to six of these.
  law("gives them back where ring and cross are neighbours", [mixedPlates], (plate) => comesBack(plate, 1e-6), 100);

  law(
    "turned by a right angle has the same frequencies, with along and across swapped",
    [plates],
    (plate) => {
      const turned = {
        ...plate,
        length: plate.width,
        width: plate.length,
        along: plate.across,
        across: plate.along,
        poisson: (plate.poisson * plate.across) / plate.along,
      };
      const [one, other] = [plateModes(plate), plateModes(turned)];
      one.lowest.forEach(({ frequency }, at) => {
        closeTo(other.lowest[at]?.frequency ?? Number.NaN, frequency, 1e-9);
      });
      // Where the two mix, names change over at a place that depends on which Poisson ratio is held.
      if (Math.abs(Math.log(one.long / one.cross)) < 0.25) return;
      closeTo(other.cross, one.long, 1e-9);
      closeTo(other.long, one.cross, 1e-9);
    },
    40,
  );

  law(
    "rings as thickness over length squared and as the root of modulus over density",
    [plates, between(0.5, 2), between(0.5, 2), between(0.5, 2), between(0.5, 2)],
    (plate, size, thick, stiff, heavy) => {
      const scaled = {
        ...plate,
        length: plate.length * size,
        width: plate.width * size,
        thickness: plate.thickness * thick,
        along: plate.along * stiff,
        across: plate.across * stiff,
        shear: plate.shear * stiff,
        density: plate.density * heavy,
      };
      const factor = (thick / size ** 2) * Math.sqrt(stiff / heavy);
      const other = plateModes(scaled);
      plateModes(plate).lowest.forEach(({ frequency }, at) => {
        closeTo(other.lowest[at]?.frequency ?? Number.NaN, frequency * factor, 1e-9);
      });
    },
    40,
  );

  law(
    "comes down to its frequencies with more polynomials, never up",
    [plates],
    (plate) => {
      const [few, more, most] = [8, 12, 16].map((polynomials) => plateModes(plate, 6, polynomials).lowest);
      most?.forEach(({ frequency }, at) => {
        const [one, two] = [few?.[at]?.frequency ?? 0, more?.[at]?.frequency ?? 0];
        expect(one).toBeGreaterThanOrEqual(two * (1 - 1e-10));
        expect(two).toBeGreaterThanOrEqual(frequency * (1 - 1e-10));
        closeTo(two, frequency, 3e-5);
      });
    },
    25,
  );

  it("that is a strip rings as a bar", () => {
    const strip = { ...woods.spruce, poisson: 0, length: 0.5, width: 0.01, thickness: 0.003 };
    const bar = barFrequency(strip.along, strip.density, strip.length, strip.thickness);
    closeTo(plateModes(strip, 3).long, bar, 1e-6);
  });

  it("that is long, narrow and thin twists as a rod of G = density (f L b/h)^2", () => {
    const strip = { ...woods.spruce, length: 0.6, width: 0.02, thickness: 0.001 };
    closeTo(strip.density * ((plateModes(strip).twist * 0.6 * 0.02) / 0.001) ** 2, strip.shear, 0.02);
  });
});

describe("shear through the thickness", () => {
  const through = { shearAlong: 0.69e9, shearAcross: 0.035e9, coefficient: 5 / 6 };
  law(
    "only lowers frequencies",
    [plates],
    (plate) => {
      const [thin, thick] = [plateModes(plate, 6, 8), plateModesWithShear(plate, through, 6, 8)];
      thin.lowest.forEach(({ frequency }, at) => {
        expect(thick.lowest[at]?.frequency).toBeLessThan(frequency);
      });
    },
    20,
  );
  it("vanishes as the section gets stiff in shear and the plate thin", () => {
    const plate = { ...woods.spruce, length: 0.5, width: 0.2, thickness: 0.002 };
    const stiff = { shearAlong: 2e10, shearAcross: 2e10, coefficient: 1 };
    const [thin, thick] = [plateModes(plate, 6, 10), plateModesWithShear(plate, stiff, 6, 10)];
    thin.lowest.forEach(({ frequency }, at) => {
      closeTo(thick.lowest[at]?.frequency ?? Number.NaN, frequency, 5e-4);
    });
  });
  it("is allowed for when moduli are sought", () => {
    const plate = { ...woods.spruce, length: 0.55, width: 0.205, thickness: 0.004 };
    const found = plateModuli(plate, plateModesWithShear(plate, through), through);
    if (!found.ok) throw new Error(found.refusal.code);
    // The even modes of the inverse have 10 polynomials, those of the forward 16: 1e-5 of a frequency apart.
    closeTo(found.value.along, plate.along, 5e-5);
    closeTo(found.value.across, plate.across, 5e-5);
    closeTo(found.value.shear, plate.shear, 5e-5);
  });
});

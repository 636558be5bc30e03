import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Dimension } from "../../../src/core/units/index.ts";
import {
  baseQuantities,
  coherentUnit,
  dimensionInWords,
  dimensionless,
  divideDimensions,
  isDimensionless,
  multiplyDimensions,
  quotientUnit,
  raiseDimension,
  rational,
  sameDimension,
  unitFromCode,
} from "../../../src/core/units/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

const exponent = fc
  .tuple(fc.integer({ min: -6, max: 6 }), fc.integer({ min: 1, max: 4 }))
  .map(([n, d]) => rational(n, d));
const dimension: fc.Arbitrary<Dimension> = fc.dictionary(fc.constantFrom(...baseQuantities), exponent, {
  maxKeys: 4,
  noNullPrototype: true,
});

law(
  "a product divided by one factor is the other",
  [dimension, dimension],
  (a, b) => void expect(sameDimension(divideDimensions(multiplyDimensions(a, b), b), a)).toBe(true),
);
law(
  "products do not mind the order",
  [dimension, dimension],
  (a, b) => void expect(multiplyDimensions(a, b)).toEqual(multiplyDimensions(b, a)),
);
law(
  "a root of a power is the dimension itself, exactly",
  [dimension, fc.integer({ min: 1, max: 5 })],
  (a, n) => void expect(sameDimension(raiseDimension(raiseDimension(a, [n, 1]), [1, n]), a)).toBe(true),
);
law(
  "anything by itself is a plain number",
  [dimension],
  (a) => void expect(isDimensionless(divideDimensions(a, a))).toBe(true),
);
law(
  "a coherent unit has the dimension it was made from, and factor one",
  [dimension.filter((d) => !d.moisture && Object.values(d).every(([n, den]) => Math.abs(n) <= 9 && den <= 9))],
  (a) => {
    const unit = unitFromCode(coherentUnit(a));
    expect(sameDimension(unit.dimension, a)).toBe(true);
    expect(unit.factor).toBe(1);
  },
);

describe("a dimension", () => {
  it("of the square root of an area is a length", () =>
    expect(raiseDimension({ length: [2, 1] }, [1, 2])).toEqual({ length: [1, 1] }));
  it("keeps kinds apart that the arithmetic would let add", () => {
    const codes = ["%", "rad", "{cent}", "%MC", "dB"];
    for (const a of codes)
      for (const b of codes) expect(sameDimension(unitFromCode(a).dimension, unitFromCode(b).dimension)).toBe(a === b);
  });
  it("has a name a maker would say", () => {
    expect(dimensionInWords(unitFromCode("GPa").dimension)).toBe("pressure");
    expect(dimensionInWords(unitFromCode("[lb_av]/[ft_i]3").dimension)).toBe("density");
    expect(dimensionInWords(unitFromCode("N.m").dimension)).toBe("N·m");
    expect(dimensionInWords(dimensionless)).toBe("a plain number");
  });
  it("of a slope is y over x", () => {
    expect(quotientUnit("mm", "GPa")).toBe("mm/GPa");
    expect(quotientUnit("mm", "kg/m3")).toBe("mm/(kg/m3)");
    expect(quotientUnit("mm", "1")).toBe("mm");
    expect(quotientUnit("1", "mm")).toBe("1/mm");
    expect(quotientUnit("mm", "mm")).toBe("1");
    expect(unitFromCode("mm/(kg/m3)").dimension).toEqual({ mass: [-1, 1], length: [4, 1] });
  });
});

law(
  "a slope's unit has the dimension of y over that of x",
  [
    fc.constantFrom("mm", "GPa", "kg/m3", "1", "[lb_av]/[ft_i]3", "m4/(kg.s)", "%", "Cel"),
    fc.constantFrom("mm", "GPa", "kg/m3", "1", "[lb_av]/[ft_i]3", "m4/(kg.s)", "%", "Cel"),
  ],
  (y, x) => {
    const unit = unitFromCode(quotientUnit(y, x));
    expect(sameDimension(unit.dimension, divideDimensions(unitFromCode(y).dimension, unitFromCode(x).dimension))).toBe(
      true,
    );
    closeTo(unit.factor, unitFromCode(y).factor / unitFromCode(x).factor, 1e-14);
  },
);

import fc from "fast-check";
import { expect, it } from "vitest";
import { concordance } from "../../../../src/core/questions/methods/concordance.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

const reading = fc.integer({ min: -4000, max: 4000 });
const pairs = fc
  .array(fc.tuple(reading, reading), { minLength: 3, maxLength: 30 })
  .filter((list) => new Set(list.map(([x]) => x)).size > 1 && new Set(list.map(([, y]) => y)).size > 1);
const columns = (list: readonly (readonly [number, number])[], change = (value: number) => value) => ({
  x: list.map(([x]) => change(x)),
  y: list.map(([, y]) => change(y)),
});

law(
  "concordance is one less the mean squared difference over what it would be without any pairing",
  [pairs],
  (list) => {
    // The other face of Lin's coefficient: over every x with every y.
    const seen = list.reduce((sum, [x, y]) => sum + (x - y) ** 2, 0) / list.length;
    const chance =
      list.reduce((sum, [x]) => sum + list.reduce((inner, [, y]) => inner + (x - y) ** 2, 0), 0) / list.length ** 2;
    const got = fieldsOf(concordance, columns(list));
    closeTo(got.ccc!, 1 - seen / chance, 1e-10, { scale: 1 });
    closeTo(got.r! * got.bias_correction!, got.ccc!, 1e-12, { scale: 1 });
  },
);

law("a common offset or stretch changes nothing, and changing the columns about only the shifts", [pairs], (list) => {
  const one = fieldsOf(concordance, columns(list));
  const names = Object.keys(one).filter((name) => Number.isFinite(one[name]) && name !== "set_aside");
  for (const change of [(v: number) => v + 4e6, (v: number) => v / 1024])
    for (const name of names)
      closeTo(fieldsOf(concordance, columns(list, change))[name]!, one[name]!, 1e-8, {
        scale: Math.max(1, Math.abs(one[name]!)),
      });
  const { x, y } = columns(list);
  const other = fieldsOf(concordance, { x: y, y: x });
  closeTo(other.ccc!, one.ccc!, 1e-12, { scale: 1 });
  closeTo(other.location_shift!, -one.location_shift!, 1e-9, { scale: Math.max(1, Math.abs(one.location_shift!)) });
  closeTo(other.scale_shift! * one.scale_shift!, 1, 1e-12);
});

it("has an interval where the columns do not go together at all", () => {
  const got = fieldsOf(concordance, { x: [1, 2, 3, 2], y: [1, 3, 1, 3] });
  expect(got.ccc).toBe(0);
  expect(got.ci95_low! < 0 && got.ci95_high! > 0).toBe(true);
});

it("withholds the interval where the columns are equal", () =>
  expect(fieldsOf(concordance, { x: [1, 2, 3, 5], y: [1, 2, 3, 5] })).toMatchObject({
    ccc: 1,
    ci95_low: null,
    se_z: null,
  }));

it.each([
  [{ x: [1, 2], y: [1, 2] }, "too-few-records"],
  [{ x: [1, 1, 1], y: [1, 2, 3] }, "no-spread"],
  [{ x: [1, 2, 3], y: [1, 2] }, "out-of-domain"],
  [{ x: [1e308, -1e308, 3], y: [-1e308, 1e308, 1] }, "not-finite"],
])("declines %j", (given, code) => expect(refusalOf(concordance, given)).toBe(code));

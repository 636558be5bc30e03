import fc from "fast-check";
import { expect, it } from "vitest";
import { sameValue } from "../../../src/notebook/engine/same-value.ts";
import { law } from "../../support/law.ts";

it("takes two missing readings as the same and a zero as other than a minus zero", () => {
  expect(sameValue(new Float64Array([Number.NaN]), new Float64Array([Number.NaN]))).toBe(true);
  expect(sameValue(0, -0)).toBe(false);
});
it("tells kinds of lists apart", () => {
  expect(sameValue(new Int32Array([1]), new Float64Array([1]))).toBe(false);
  expect(sameValue([1], new Float64Array([1]))).toBe(false);
  expect(sameValue(new Map([["a", 1]]), new Map([["a", 2]]))).toBe(false);
});
it("takes functions as the same only when they are one", () => {
  const cellAt = () => null;
  expect(sameValue({ cellAt }, { cellAt })).toBe(true);
  expect(sameValue({ cellAt: () => null }, { cellAt: () => null })).toBe(false);
});
law("plain data are the same as their copy", [fc.jsonValue()], (value) => sameValue(value, structuredClone(value)));
law(
  "one changed number is seen anywhere",
  [fc.array(fc.double({ noNaN: true }), { minLength: 1 }), fc.nat()],
  (list, at) => {
    const other = Float64Array.from(list);
    const place = at % list.length;
    other[place] = other[place] === 1 ? 2 : 1;
    return !sameValue(Float64Array.from(list), other);
  },
);

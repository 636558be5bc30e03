import { expect, it } from "vitest";
import { recordsToSettle } from "../../../src/core/verdicts/index.ts";

it("asks for three times as many again to halve the interval", () => {
  expect(recordsToSettle(20, 2, 1)).toBe(60);
});
it("asks for one at least", () => {
  expect(recordsToSettle(20, 1, 1)).toBe(1);
});
it("gives no number when the estimate stands on the line", () => {
  expect(recordsToSettle(20, 1, 0)).toBeNull();
  expect(recordsToSettle(20, 1, 0.01)).toBeNull();
});
it("gives a thousand, and no number above it", () => {
  expect(recordsToSettle(125, 3, 1)).toBe(1000);
  expect(recordsToSettle(126, 3, 1)).toBeNull();
});

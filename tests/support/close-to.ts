import { expect } from "vitest";

/** How many leading digits two numbers share, for the message. */
const sharedDigits = (actual: number, expected: number) =>
  actual === expected ? 17 : Math.max(0, -Math.log10(Math.abs(actual - expected) / Math.abs(expected)));

/** |actual − expected| ≤ relative·|expected|, or ≤ relative·scale where a scale is given (needed when zero is expected). */
export function closeTo(
  actual: number,
  expected: number,
  relative: number,
  options: { readonly scale?: number } = {},
): void {
  if (expected === 0 && options.scale === undefined) throw new Error("an expected zero needs a scale");
  const bound = relative * (options.scale ?? Math.abs(expected));
  const close = Math.abs(actual - expected) <= bound || Object.is(actual, expected);
  expect(
    close,
    `${actual} for ${expected}: ${sharedDigits(actual, expected).toFixed(1)} digits agree, ${relative} wanted`,
  ).toBe(true);
}

import { expect, it } from "vitest";
import { isInReading } from "../../../src/app/views/is-in-reading.ts";

it.each([
  ["2.31", "2.31 mm", "mm", true],
  ["2.310", "2.31 mm", "mm", false],
  ["2,31", "2.31 mm", "mm", false],
  ["0.1779 kg", "0.1779 kg", "g", true],
  ["2.31", "2.31 mm", null, false],
  ["", "nothing measured", "mm", true],
] as const)("%s read as %s in %s", (raw, reading, unit, seen) =>
  expect(isInReading({ raw, reading }, unit)).toBe(seen),
);

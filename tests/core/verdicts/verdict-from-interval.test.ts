import { expect, it } from "vitest";
import { verdictFromInterval } from "../../../src/core/verdicts/index.ts";

it("keeps a rule when all of the interval lies at or above the claim", () => {
  expect(verdictFromInterval(0.1, 0.4, 0.1)).toBe("kept");
});
it("breaks a rule when all of the interval lies below the claim", () => {
  expect(verdictFromInterval(-0.4, -0.1, 0)).toBe("broken");
});
it("cannot tell while the interval reaches across the claim", () => {
  expect(verdictFromInterval(-0.1, 0.4, 0)).toBe("cannot-tell");
});
it("cannot tell while the interval just touches the claim from below", () => {
  expect(verdictFromInterval(-0.4, 0, 0)).toBe("cannot-tell");
});

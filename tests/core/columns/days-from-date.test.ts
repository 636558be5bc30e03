import fc from "fast-check";
import { expect, it } from "vitest";
import { daysFromDate } from "../../../src/core/columns/index.ts";
import { dateText } from "../../../src/core/formula/index.ts";
import { law } from "../../support/law.ts";

// ECMA-262, Date.UTC: days since 1970-01-01
law(
  "a day counts as the platform's calendar counts it, and comes back as it was",
  [fc.integer({ min: -600_000, max: 2_000_000 })],
  (days) => {
    const text = new Date(days * 86_400_000).toISOString().slice(0, 10);
    if (!/^\d{4}-/.test(text)) return;
    expect(daysFromDate(text)).toBe(days);
    expect(dateText(days)).toBe(text);
  },
);
it.each(["2023-02-29", "2024-13-01", "1900-02-29", "May 2024", "", "2024-05-02T25:00"])("%s is no day", (text) =>
  expect(daysFromDate(text)).toBeNaN(),
);
it("a month counts from its first day", () => expect(daysFromDate("2024-05")).toBe(daysFromDate("2024-05-01")));

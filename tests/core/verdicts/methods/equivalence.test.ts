import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { equivalence } from "../../../../src/core/verdicts/index.ts";
import { closeTo } from "../../../support/close-to.ts";

// Schuirmann (1987) by R 4.2.2 from the formula; the source stands in each file.
it.each(["equivalence-yes", "equivalence-cant-tell"])("agrees with R on %s", (name) => {
  const { data, options, expected } = JSON.parse(readFileSync(`tests/reference/stats/cases/${name}.json`, "utf8"));
  const run = equivalence.run({ ...data, margin: options.margin, alpha: options.alpha });
  if (!run.ok) throw new Error(run.refusal.code);
  for (const [field, { value }] of Object.entries(expected) as [string, { value: number | boolean }][]) {
    const got = (run.value as Record<string, number | boolean>)[field];
    if (typeof value === "number") closeTo(got as number, value, 1e-8, { scale: Math.max(Math.abs(value), 1e-6) });
    else expect(got).toBe(value);
  }
});

it("refuses two groups that do not vary", () => {
  expect(equivalence.run({ a: [1, 1], b: [2, 2], margin: 1 })).toMatchObject({
    ok: false,
    refusal: { code: "no-spread" },
  });
});

import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import type { Answer } from "../../../src/core/base/index.ts";
import { checkRig } from "../../../src/core/rig/check-rig.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";
import { type RigTable, rigTable } from "./rig-table.ts";

type Case = {
  readonly data: { readonly reading: number[]; readonly reference: number[] | number };
  readonly expected: Readonly<Record<string, { readonly value: number }>>;
};
const outside = (id: string) =>
  JSON.parse(readFileSync(new URL(`../../reference/stats/cases/${id}.json`, import.meta.url), "utf8")) as Case;
const asked = (rig: RigTable, more: object = {}) =>
  checkRig({ ...rig, name: "balance", date: null, mask: null, ...more });
function answered(rig: RigTable, more: object = {}): Answer {
  const finding = asked(rig, more);
  if (finding.kind === "refused") throw new Error(finding.sentence);
  return finding;
}
const estimate = (finding: Answer, start: string) => finding.estimate.find((one) => one.name.startsWith(start));

it("gives the bias and its interval of one reference as R's t.test does (case rig-bias-balance)", () => {
  const { data, expected } = outside("rig-bias-balance");
  const bias = estimate(
    answered(
      rigTable(
        data.reading,
        data.reading.map(() => 100),
      ),
    ),
    "bias",
  );
  closeTo(bias?.value ?? 0, expected.bias?.value ?? 0, 1e-9);
  closeTo(bias?.low ?? 0, expected.ci95_low?.value ?? 0, 1e-9);
  closeTo(bias?.high ?? 0, expected.ci95_high?.value ?? 0, 1e-9);
  expect(bias?.unit).toBe("g");
});

it("gives the linearity of five references as R's lm does (case rig-linearity-balance)", () => {
  const { data, expected } = outside("rig-linearity-balance");
  const finding = answered(rigTable(data.reading, data.reference as number[]));
  closeTo(estimate(finding, "slope")?.value ?? 0, expected.slope?.value ?? 0, 1e-9);
  closeTo(estimate(finding, "slope")?.standardError ?? 0, expected.se_slope?.value ?? 0, 1e-9);
  closeTo(estimate(finding, "bias")?.value ?? 0, expected.average_bias?.value ?? 0, 1e-9);
  closeTo(
    finding.checks.find((check) => check.id === "lack-of-fit")?.value ?? 0,
    expected.lack_of_fit_p?.value ?? 0,
    1e-7,
  );
  expect(finding.cautions.map((caution) => caution.code)).toContain("not-straight");
  expect(finding.sentence).toMatch(
    /^The balance reads 0\.08\d+ ± 0\.00\d+ g heavy at 172 g, and 0\.040\d* ± 0\.003\d* g more for every 100 g; repeatability 0\.0\d+ g\.$/,
  );
});

it("says in plain words that a balance reads heavy, the same across its range", () => {
  const off = [0.31, 0.28, 0.33, 0.3, 0.34, 0.29, 0.32, 0.31, 0.27, 0.35];
  const references = [10, 10, 50, 50, 100, 100, 200, 200, 500, 500];
  expect(
    answered(
      rigTable(
        off.map((error, i) => error + (references[i] ?? 0)),
        references,
      ),
    ).sentence,
  ).toMatch(/^The balance reads 0\.3\d+ ± 0\.0\d+ g heavy, the same across its range; repeatability 0\.0\d+ g\.$/);
});

it("says light for a balance that reads too little", () => {
  expect(answered(rigTable([99.7, 99.72, 99.69, 99.71], [100, 100, 100, 100])).sentence).toMatch(
    /^The balance reads 0\.29\d* ± \S+ g light, at the one reference/,
  );
});

it("says that no bias shows when the interval holds zero", () => {
  expect(answered(rigTable([100.1, 99.9, 100.05, 99.96], [100, 100, 100, 100])).sentence).toMatch(
    /^The balance shows no bias \(0\.00\d* ± 0\.04\d* g\)/,
  );
});

it("finds a drift over the days and says how much a year", () => {
  const days = Array.from({ length: 12 }, (_, i) => 19_000 + 30 * i);
  const scatter = [1, -1, 1, 1, -1, -1, 1, -1, -1, 1, 1, -1];
  const readings = days.map((day, i) => 100 + 0.002 * (day - 19_000) + 0.01 * (scatter[i] ?? 0));
  const rig = rigTable(
    readings,
    readings.map(() => 100),
    days,
  );
  const finding = answered(rig, { date: rig.date });
  expect(estimate(finding, "drift")?.unit).toBe("g/d");
  closeTo(estimate(finding, "drift")?.value ?? 0, 0.002, 0.05);
  expect(finding.sentence).toMatch(/; it drifts up by 0\.7\d* ± 0\.0\d+ g a year;/);
});

it("refuses two records, readings without scatter, and references of another kind", () => {
  expect(asked(rigTable([100, 100.1], [100, 100]))).toMatchObject({ kind: "refused", code: "too-few-records" });
  expect(asked(rigTable([100.5, 50.5, 10.5], [100, 50, 10]))).toMatchObject({ kind: "refused", code: "perfect-fit" });
  const rig = rigTable([100.1, 100.2, 100], [100, 100, 100]);
  expect(asked(rig, { reference: { ...rig.reference, unit: "mm", dimension: { length: [1, 1] } } })).toMatchObject({
    kind: "refused",
    code: "wrong-dimension",
  });
  expect(asked(rig, { mask: new Uint8Array(3) })).toMatchObject({ kind: "refused", code: "no-records" });
});

it("sets a record with a blank reading aside by name, and the answer is as without it", () => {
  const whole = answered(rigTable([100.1, 100.2, 100.05, 100.12], [100, 100, 100, 100]));
  const gap = answered(rigTable([100.1, 100.2, null, 100.05, 100.12], [100, 100, 100, 100, 100]));
  expect(gap.estimate).toEqual(whole.estimate);
  expect(gap.rows.setAside).toMatchObject([{ row: { piece: "m-3" }, why: "missing-value" }]);
});

it("traces back to the raw cells of readings and references", () => {
  const cells = answered(rigTable([100.1, 100.2, 100.05], [100, 100, 100])).trace.steps.flatMap(
    (step) => step.cells ?? [],
  );
  expect(cells.map((cell) => cell.raw)).toEqual(expect.arrayContaining(["100.1", "100.2", "100.05", "100"]));
});

const errors = fc
  .array(fc.integer({ min: -500, max: 500 }), { minLength: 6, maxLength: 30 })
  .filter((list) => new Set(list).size > 2);
law("does not depend on the order of records", [errors], (list) => {
  const make = (order: readonly number[]) =>
    rigTable(
      order.map((i) => 100 + 10 * (i % 3) + (list[i] ?? 0) / 1000),
      order.map((i) => 100 + 10 * (i % 3)),
    );
  const order = list.map((_, i) => i);
  const [there, back] = [asked(make(order)), asked(make([...order].reverse()))];
  if (there.kind === "refused" || back.kind === "refused") return expect(there.kind).toBe(back.kind);
  for (const [i, one] of there.estimate.entries())
    closeTo(back.estimate[i]?.value ?? 0, one.value, 1e-7, { scale: Math.abs(one.value) + (one.standardError ?? 0) });
});

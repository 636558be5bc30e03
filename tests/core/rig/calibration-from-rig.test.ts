import { expect, it } from "vitest";
import { calibrationFromRig } from "../../../src/core/rig/calibration-from-rig.ts";
import { closeTo } from "../../support/close-to.ts";
import { rigTable } from "./rig-table.ts";

const scatter = [1, -1, -1, 1, 1, -1, -1, 1, 1, -1, -1, 1];
const calibration = (readings: readonly number[], references: readonly number[], days?: readonly number[]) => {
  const rig = rigTable(readings, references, days);
  const outcome = calibrationFromRig({ ...rig, date: days ? rig.date : null, name: "balance", mask: null });
  if (!outcome.ok) throw new Error(outcome.refusal.code);
  return outcome.value;
};

it("takes a constant bias off every reading, and carries the standard error of its mean", () => {
  const made = calibration(
    scatter.map((sign) => 100.3 + 0.01 * sign),
    scatter.map(() => 100),
  );
  closeTo(made.correctionAt(Number.NaN, 0.05), -0.3e-3, 1e-9);
  // Twelve errors 0.30 ± 0.01 g: s = 0.01 sqrt(12/11), over sqrt(12).
  closeTo(made.uncertainty(Number.NaN, 0.05), (0.01e-3 * Math.sqrt(12 / 11)) / Math.sqrt(12), 1e-9);
});

it("gives a reading back to its reference where the bias grows with what is weighed", () => {
  const references = scatter.map((_, i) => [10, 100, 500][i % 3] ?? 0);
  const made = calibration(
    references.map((value, i) => value * 1.05 + 0.05 + 0.001 * (scatter[i] ?? 0)),
    references,
  );
  for (const grams of [20, 250])
    closeTo(
      (grams * 1.05 + 0.05) / 1000 + made.correctionAt(Number.NaN, (grams * 1.05 + 0.05) / 1000),
      grams / 1000,
      1e-4,
    );
  expect(made.uncertainty(Number.NaN, 0.5)).toBeGreaterThan(made.uncertainty(Number.NaN, 0.2));
});

it("corrects by date where the rig drifts, and holds the last check beyond it", () => {
  const days = scatter.map((_, i) => 19_000 + 30 * i);
  const made = calibration(
    days.map((day, i) => 100 + 0.002 * (day - 19_000) + 0.01 * (scatter[i] ?? 0)),
    scatter.map(() => 100),
    days,
  );
  closeTo(made.correctionAt(19_000 + 150, 0.1), -0.3e-3, 0.02);
  expect(made.correctionAt(30_000, 0.1)).toBe(made.correctionAt(19_000 + 330, 0.1));
});

it("declines where there is too little to calibrate by", () => {
  const rig = rigTable([100, 100.1], [100, 100]);
  expect(calibrationFromRig({ ...rig, name: "balance", mask: null })).toMatchObject({
    ok: false,
    refusal: { code: "too-few-records" },
  });
});

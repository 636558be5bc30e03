import { expect, it } from "vitest";
import schema from "../../../data-schema/finding.schema.json";
import validate from "../../../data-schema/finding.schema.json?validator";
import { glossary } from "../../../src/core/base/glossary.ts";
import { checkRig } from "../../../src/core/rig/check-rig.ts";
import { rigTable } from "../../core/rig/rig-table.ts";

const check = (readings: readonly number[]) =>
  JSON.parse(
    JSON.stringify(
      checkRig({
        ...rigTable(
          readings,
          readings.map(() => 100),
        ),
        name: "balance",
        date: null,
        mask: null,
      }),
    ),
  );

it("holds an answer and a refusal as they are computed", () => {
  expect(validate(check([100.1, 100.2, 100.15, 100.12])), JSON.stringify(validate.errors)).toBe(true);
  expect(validate(check([100.1])), JSON.stringify(validate.errors)).toBe(true);
});

it("refuses an estimate without an interval, and a field that nobody knows", () => {
  const finding = check([100.1, 100.2, 100.15]);
  expect(validate({ ...finding, estimate: [{ name: "bias", value: 1, unit: "g", level: 0.95 }] })).toBe(false);
  expect(validate({ ...finding, result: 1 })).toBe(false);
});

it("knows the fields of a finding by the names of the glossary", () => {
  const fields = [
    ...Object.keys(schema.$defs.answer.properties),
    ...Object.keys(schema.$defs.estimate.properties),
    ...Object.keys(schema.$defs.refused.properties),
  ];
  expect(fields.filter((field) => !(field in glossary))).toEqual([]);
});

// Each method of the rig room against outside cases; the source stands inside each case (tests/reference/stats/cases).
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { MethodInputs } from "../../../src/core/base/index.ts";
import { rigMethods } from "../../../src/core/rig/rig-methods.ts";

type Wanted = { readonly value: unknown; readonly rtol?: number; readonly atol?: number; readonly of?: string };
type Case = {
  readonly id: string;
  readonly method: string;
  readonly data: MethodInputs;
  readonly options?: MethodInputs;
  readonly expected: Readonly<Record<string, Wanted>>;
};

const folder = new URL("../../reference/stats/cases/", import.meta.url);
const cases = readdirSync(folder)
  .filter((file) => /^(rig-|iso5725|gauge-rr)/.test(file))
  .map((file) => JSON.parse(readFileSync(new URL(file, folder), "utf8")) as Case);

function within(actual: unknown, wanted: Wanted, at: string): void {
  if (Array.isArray(wanted.value)) {
    expect(Array.isArray(actual) && actual.length, at).toBe(wanted.value.length);
    for (const [i, value] of wanted.value.entries())
      within((actual as unknown[])[i], { ...wanted, value }, `${at}[${i}]`);
  } else if (typeof wanted.value === "number") {
    const allowed = Math.max((wanted.rtol ?? 0) * Math.abs(wanted.value), wanted.atol ?? 0);
    expect(Math.abs((actual as number) - wanted.value) <= allowed, `${at}: ${String(actual)} for ${wanted.value}`).toBe(
      true,
    );
  } else expect(actual, at).toEqual(wanted.value);
}

it("knows the method of every case", () => {
  const known = rigMethods.map(({ id }) => id);
  expect(cases.filter(({ method }) => !known.includes(method)).map(({ id }) => id)).toEqual([]);
});

describe.each(cases)("$id", ({ method, data, options, expected }) => {
  it("gives the figures of its source", () => {
    const outcome = rigMethods.find((candidate) => candidate.id === method)?.run({ ...data, ...options });
    if (!outcome?.ok) throw new Error(`declined: ${JSON.stringify(outcome)}`);
    for (const [field, wanted] of Object.entries(expected)) within(outcome.value[wanted.of ?? field], wanted, field);
  });
});

it("returns the fields that each method's record lists, and no others", () => {
  for (const { method: id, data, options } of cases) {
    const method = rigMethods.find((candidate) => candidate.id === id);
    const outcome = method?.run({ ...data, ...options });
    if (outcome?.ok) expect(Object.keys(outcome.value).sort()).toEqual(Object.keys(method?.fields ?? {}).sort());
  }
});

it("declines a bias from one reading, or from readings without scatter", () => {
  const bias = rigMethods.find((method) => method.id === "rig-bias");
  expect(bias?.run({ reading: [100.1], reference: 100 })).toMatchObject({
    ok: false,
    refusal: { code: "too-few-records" },
  });
  expect(bias?.run({ reading: [100.1, 100.1, 100.1], reference: 100 })).toMatchObject({
    ok: false,
    refusal: { code: "perfect-fit" },
  });
});

it("declines linearity from one reference", () => {
  const linearity = rigMethods.find((method) => method.id === "rig-linearity");
  expect(linearity?.run({ reading: [1, 1.1, 0.9], reference: [1, 1, 1] })).toMatchObject({
    ok: false,
    refusal: { code: "no-spread" },
  });
});

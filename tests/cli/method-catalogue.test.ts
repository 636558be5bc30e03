// The catalogue of methods walked: every record is complete, has a case or an example that runs, and every method and quantity of the reference is there.
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { methodRun } from "../../src/cli/method-answer.ts";
import { unitFromText } from "../../src/core/units/index.ts";
import { methods } from "../../src/notebook/engine/index.ts";
import { statsCaseResult } from "../reference/case-adapter.ts";
import { casesIn } from "../reference/load-cases.ts";
import type { PhysicsCase } from "../reference/physics-case.ts";
import { physicsAdapters, physicsCaseResult } from "../reference/physics-case-result.ts";
import { methodOf, type StatsCase } from "../reference/stats-case.ts";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const statsCases = casesIn(here("../reference/stats/cases")) as readonly StatsCase[];
const physicsCases = casesIn(here("../reference/physics/checks.json")) as readonly PhysicsCase[];
const ids = new Set(methods.map(({ id }) => id));
const KINDS = /^(quantity|quantities|table|label|labels|grades|number|text|choice|yes-no)$/;

/** Lines for methods that no case from outside runs; each has a result that is right by the formula beside it. */
const EXAMPLES: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  // f = 1.028 h sqrt(E/rho)/L^2
  "bar-frequency": { youngsModulus: 1e10, density: 400, length: 0.5, thickness: 0.003 },
};

describe("every record of the catalogue", () => {
  it("has an id of its own, of small letters, digits and hyphens", () => {
    expect(ids.size).toBe(methods.length);
    expect(methods.filter(({ id }) => !/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(id)).map(({ id }) => id)).toEqual([]);
  });
  it.each(methods.map((method) => [method.id, method] as const))("%s is described", (_, method) => {
    expect(method.name.length).toBeGreaterThan(3);
    expect(method.answers).toMatch(/^[a-z]+$/);
    expect(method.source.citation.length).toBeGreaterThan(5);
    expect(Object.keys(method.fields).length).toBeGreaterThan(0);
    for (const spec of [...Object.values(method.inputs), ...Object.values(method.fields)]) {
      expect(spec.meaning.length).toBeGreaterThan(0);
      if (spec.dimension !== undefined && spec.dimension !== "1") expect(unitFromText(spec.dimension)).not.toBeNull();
    }
    for (const spec of Object.values(method.inputs)) {
      expect(spec.kind).toMatch(KINDS);
      if (spec.kind === "choice") expect(spec.choices?.length).toBeGreaterThan(1);
    }
  });
  it("is run by a case from outside or by an example here", () => {
    const byCases = new Set([
      ...statsCases.map(methodOf),
      ...physicsCases.flatMap(({ quantity }) => (physicsAdapters[quantity] ?? []).map(({ method }) => method)),
    ]);
    expect([...ids].filter((id) => !byCases.has(id) && !(id in EXAMPLES))).toEqual([]);
  });
  it.each(Object.entries(EXAMPLES))("%s answers its example", (id, inputs) => {
    const method = methods.find((each) => each.id === id);
    expect(method && methodRun(method, inputs)).toHaveProperty("result");
  });
});

describe("every case from outside", () => {
  it("has a method of the catalogue", () => {
    expect([...new Set(statsCases.map(methodOf))].filter((id) => !ids.has(id))).toEqual([]);
  });
  it("has a quantity whose ways are methods of the catalogue", () => {
    const quantities = [...new Set(physicsCases.map(({ quantity }) => quantity))];
    expect(quantities.filter((quantity) => (physicsAdapters[quantity] ?? []).length === 0)).toEqual([]);
    const unknown = Object.values(physicsAdapters).flatMap((ways) => ways.filter(({ method }) => !ids.has(method)));
    expect(unknown.map(({ method }) => method)).toEqual([]);
  });
  it("gives only fields that the record describes", () => {
    const odd = new Set<string>();
    const given = (id: string, result: unknown) => {
      const fields = methods.find((each) => each.id === id)?.fields ?? {};
      for (const field of Object.keys(result ?? {})) if (!(field in fields)) odd.add(`${id}: ${field}`);
    };
    const watched = methods.map((method) => ({
      ...method,
      run: (inputs: Parameters<typeof method.run>[0]) => {
        const outcome = method.run(inputs);
        if (outcome.ok) given(method.id, outcome.value);
        return outcome;
      },
    }));
    for (const one of statsCases) statsCaseResult(one, watched);
    for (const one of physicsCases) physicsCaseResult(one, watched);
    expect([...odd]).toEqual([]);
  });
});

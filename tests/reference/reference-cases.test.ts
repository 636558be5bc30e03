// Every case of tests/reference through the command that also runs other people's: the source and the tolerance of each field are inside the case.
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { methods } from "../../src/notebook/engine/index.ts";
import { physicsCaseResult, statsCaseResult } from "./case-adapter.ts";
import { physicsFaults, statsFaults } from "./judged.ts";
import { casesIn } from "./load-cases.ts";
import type { PhysicsCase } from "./physics-case.ts";
import { methodOf, type StatsCase } from "./stats-case.ts";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const statsCases = ["stats/cases", "stats/cases-in-r"].flatMap((folder) =>
  casesIn(here(folder)),
) as readonly StatsCase[];
const physicsCases = ["physics/checks.json", "physics/more-checks.json"].flatMap((file) =>
  casesIn(here(file)),
) as readonly PhysicsCase[];

const counts = new Map<string, { cases: number; fields: number }>();
function counted(name: string, expected: object): void {
  const before = counts.get(name) ?? { cases: 0, fields: 0 };
  counts.set(name, { cases: before.cases + 1, fields: before.fields + Object.keys(expected).length });
}
afterAll(() => {
  const lines = [...counts].map(([name, { cases, fields }]) => `${name}: ${cases} cases, ${fields} fields`);
  console.info(`Cases from outside, by method:\n${lines.join("\n")}`);
});

describe("statistics", () => {
  it.each(statsCases.map((one) => [methodOf(one), one.id, one] as const))("%s gives what %s says", (method, _, one) => {
    const result = statsCaseResult(one, methods);
    expect(result, `no method ${method}`).not.toBeNull();
    expect(statsFaults(one, result ?? {})).toEqual([]);
    counted(method, one.expected);
  });
});

describe("wood physics", () => {
  it.each(physicsCases.map((one) => [one.quantity, one.id, one] as const))("%s is what %s says", (quantity, _, one) => {
    const result = physicsCaseResult(one, methods);
    expect(result, `no method for ${quantity}`).not.toBeNull();
    expect(physicsFaults(one, result ?? {})).toEqual([]);
    counted(quantity, one.expected);
  });
});

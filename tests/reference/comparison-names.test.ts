// Cases of comparison say the same with columns of other names, or as a long table with labels.
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { methods } from "../../src/notebook/engine/index.ts";
import { statsCaseResult } from "./case-adapter.ts";
import { statsFaults } from "./judged.ts";
import { casesIn } from "./load-cases.ts";
import type { StatsCase } from "./stats-case.ts";

const cases = casesIn(fileURLToPath(new URL("stats/cases", import.meta.url))) as readonly StatsCase[];
const faults = (one: StatsCase) => statsFaults(one, statsCaseResult(one, methods) ?? {});
const ofGroups = cases.filter(
  ({ method, data }) => /^(mann-whitney|hedges-g|cliff-delta|permutation|welch-t)$/.test(method) && "a" in data,
);
const lists = (one: StatsCase) => one.data as Readonly<Record<string, readonly number[]>>;

describe("two groups", () => {
  it.each(ofGroups.map((one) => [one.id, one] as const))("%s with its groups under other names", (_, one) => {
    const { a, b } = lists(one);
    const statistic = one.options.statistic === undefined ? {} : { statistic: "mean(spruce) - mean(cedar)" };
    const options = { ...one.options, ...statistic, difference: "spruce - cedar" };
    expect(faults({ ...one, data: { cedar: b, spruce: a }, options })).toEqual([]);
  });

  it.each(ofGroups.map((one) => [one.id, one] as const))("%s as a long table", (_, one) => {
    const { a = [], b = [] } = lists(one);
    const wood = [...b.map(() => "cedar"), ...a.map(() => "spruce")];
    const { difference: _said, ...options } = one.options;
    const statistic = options.statistic === undefined ? {} : { statistic: "difference of means" };
    const data = { wood, stiffness: [...b, ...a] };
    expect(faults({ ...one, data, options: { ...options, ...statistic, group_order: ["spruce", "cedar"] } })).toEqual(
      [],
    );
  });
});

describe("resampling", () => {
  const caseOf = (id: string) => cases.find((one) => one.id === id) as StatsCase;
  it("takes the columns that the words name", () => {
    const slope = caseOf("bootstrap-slope6");
    const { x, y } = lists(slope);
    const options = { ...slope.options, statistic: "slope of thick on stiff, pairs resampled" };
    expect(faults({ ...slope, data: { thick: y, stiff: x }, options })).toEqual([]);
    const mean = caseOf("bootstrap-mean5");
    const named = { ...mean.options, statistic: "mean of thickness" };
    expect(faults({ ...mean, data: { thickness: lists(mean).x }, options: named })).toEqual([]);
  });

  it("shuffles within the blocks that an option names", () => {
    const one = caseOf("permutation-within");
    const { x, y, block } = lists(one);
    expect(
      faults({ ...one, data: { stiff: x, thick: y, wood: block }, options: { ...one.options, block: "wood" } }),
    ).toEqual([]);
  });
});

// Numbers: tests/reference/stats/cases (R 4.2.2), read here through the maker's question instead of the method.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Answer, Finding } from "../../../src/core/base/index.ts";
import type { Column } from "../../../src/core/columns/index.ts";
import { answerRelation, type RelationInput } from "../../../src/core/questions/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";
import { label, quantity, tableOf } from "../../support/table-of.ts";

const caseOf = (id: string) =>
  JSON.parse(readFileSync(new URL(`../../reference/stats/cases/${id}.json`, import.meta.url), "utf8")) as {
    data: Record<string, never[]>;
    expected: Record<string, { value: never }>;
  };
const tops = (id: string, uncertainty: number | null = null) => {
  const { data } = caseOf(id);
  const labels = Object.keys(data)
    .filter((name) => typeof data[name]![0] === "string")
    .map((name) => label(name, data[name]!));
  const [x, y] = [
    quantity("stiffness_along", "GPa", data.E_long ?? data.x!, uncertainty),
    quantity("final_thickness", "mm", data.thickness ?? data.y!),
  ];
  return { x, y, labels, columns: [x, y, ...labels] as Column[] };
};
const ask = (
  columns: readonly Column[],
  parts: Partial<RelationInput> & Pick<RelationInput, "x" | "y">,
  table = {},
): Finding =>
  answerRelation({
    table: tableOf(columns, table),
    allowingFor: [],
    within: null,
    powerLaw: false,
    mask: null,
    by: null,
    asked: 1,
    ...parts,
  });
const answered = (finding: Finding): Answer => {
  if (finding.kind === "refused") throw new Error(finding.sentence);
  return finding;
};
const codes = (finding: Finding) => answered(finding).cautions.map((caution) => caution.code);

describe("did stiffer tops end up thinner", () => {
  it("gives the slope in the shown units with its t interval, as R does", () => {
    const { x, y, columns } = tops("ols-simple-tops12");
    const [slope] = answered(ask(columns, { x: [x], y })).estimate;
    expect(slope).toMatchObject({
      name: "slope of final thickness on stiffness along",
      unit: "mm/GPa",
      level: 0.95,
      degreesOfFreedom: 10,
    });
    closeTo(slope!.value, -0.09565658272773339, 1e-9);
    closeTo(slope!.low, -0.12542720443221989, 1e-9);
    closeTo(slope!.high, -0.0658859610232469, 1e-9);
  });
  it("says it in a sentence with unit, interval and number of records", () => {
    const { x, y, columns } = tops("ols-simple-tops12");
    expect(answered(ask(columns, { x: [x], y })).sentence).toBe(
      "The final thickness falls by 0.096 mm for each GPa of stiffness along (95 % interval −0.125 to −0.066 mm/GPa), 12 records.",
    );
  });
  it("gives one slope common to the species when it allows for them", () => {
    const { x, y, labels, columns } = tops("ancova-tops36");
    const finding = answered(ask(columns, { x: [x], y, allowingFor: labels }));
    closeTo(finding.estimate[0]!.value, -0.06999477976045533, 1e-9);
    closeTo(finding.estimate[0]!.low, -0.08365480498246752, 1e-9);
    expect(finding.sentence).toContain("within species, 36 records");
  });
  it("gives each species its own slope when asked within", () => {
    const { x, y, labels, columns } = tops("ancova-tops36");
    const finding = answered(ask(columns, { x: [x], y, within: labels[0] as never }));
    for (const [at, slope] of [-0.0876291805254737, -0.07130165446788055, -0.06058784627819822].entries())
      closeTo(finding.estimate[at]!.value, slope, 1e-9);
    expect(finding.estimate[0]!.name).toBe("slope of final thickness on stiffness along within cedar");
  });
  it("says within before across when species flip the slope", () => {
    const { x, y, columns } = tops("ancova-reversal");
    const finding = answered(ask(columns, { x: [x], y }));
    expect(codes(finding)[0]).toBe("across-contradicts-within");
    expect(finding.sentence).toMatch(/^Within each species, the final thickness falls by 0\.05\d+ mm/);
    closeTo(finding.estimate.find((one) => one.name === "slope within species")!.value, -0.0508255292226344, 1e-9);
  });
  it("counts pieces of one tree together when the table says so, and says what that costs", () => {
    const { x, y, columns } = tops("cluster-robust-tops24");
    const finding = answered(ask(columns, { x: [x], y }, { shared: "tree" }));
    expect(finding.method.id).toBe("cluster-robust");
    closeTo(finding.estimate[0]!.low, -0.11998961757657622, 1e-7);
    expect(codes(finding)).toContain("pieces-share");
    expect(finding.checks.find((check) => check.id === "pieces-share-cost")!.sentence).toMatch(
      /interval [\d.]+ times as wide/,
    );
  });
  it("names the piece that carries the answer", () => {
    const { x, y, columns } = tops("influence-tops12");
    const check = answered(ask(columns, { x: [x], y })).checks.find((one) => one.id === "influence")!;
    expect(check.sentence).toMatch(/^Without T-\d+, the slope is −0\.\d+ \(.* mm\/GPa\)\.$/);
  });
  it("gives the exponent of a power law and tests it against minus a third", () => {
    const { x, y, columns } = tops("power-law-tops20");
    const finding = answered(ask(columns, { x: [x], y, powerLaw: true }));
    closeTo(finding.estimate[0]!.value, -0.3064793344714798, 1e-9);
    closeTo(finding.checks.find((check) => check.id === "exponent-one-third")!.value, 0.47137971518616595, 1e-8);
    expect(finding.sentence).toContain("to the power −0.306");
  });
  it("says how many more instruments would tell when it can't tell yet (power-slope, R 4.2.2)", () => {
    const { x, y, columns } = tops("power-slope");
    const finding = answered(ask(columns, { x: [x], y }));
    expect(finding.sentence).toMatch(/^Can't tell yet whether the final thickness rises or falls with stiffness along/);
    expect(finding.sentence).toContain("about 8 more instruments would tell");
    expect(codes(finding)).toContain("few-records");
  });
  it("tells how much measurement error flattens the slope and gives the steeper one", () => {
    const { x, y, columns } = tops("ols-simple-tops30", 20);
    const finding = answered(ask(columns, { x: [x], y }));
    const flattened = finding.checks.find((check) => check.id === "measurement-error")!;
    const corrected = finding.estimate.find((one) => one.name.endsWith("corrected for measurement error"))!;
    closeTo(corrected.value, finding.estimate[0]!.value / (1 - flattened.value), 1e-12);
    expect(codes(finding)).toContain("measurement-error-flattens");
  });
  it("warns when both columns rest on one measurement", () => {
    const { x, y, columns } = tops("ols-simple-tops12");
    const computed = {
      ...x,
      origin: {
        from: "formula",
        formula: "bar_stiffness(mass, final_thickness)",
        parents: ["final_thickness", "mass"],
        roots: ["final_thickness", "mass"],
      },
    } as const;
    const finding = answered(ask([computed, ...columns.slice(1)], { x: [computed], y }));
    expect(finding.cautions.find((one) => one.code === "shared-ancestor")!.sentence).toContain(
      "same measurement of final thickness",
    );
    expect(finding.trace.steps.some((step) => step.formula === "bar_stiffness(mass, final_thickness)")).toBe(true);
  });
  it("says it is the twentieth question", () => {
    const { x, y, columns } = tops("ols-simple-tops12");
    expect(codes(ask(columns, { x: [x], y, asked: 20 }))).toContain("many-questions");
    expect(codes(ask(columns, { x: [x], y, asked: 5 }))).not.toContain("many-questions");
  });
});

describe("a relation refuses", () => {
  const y = quantity("final_thickness", "mm", [2.1, 2.3, 2.2, 2.5]);
  const x = (values: number[]) => quantity("stiffness_along", "GPa", values);
  const refusal = (columns: Column[], parts: Parameters<typeof ask>[1]) =>
    (ask(columns, parts) as { code: string }).code;
  it.each([
    ["no usable record", [Number.NaN, Number.NaN, Number.NaN, Number.NaN], "no-records"],
    ["two records", [10, 11, Number.NaN, Number.NaN], "too-few-records"],
    ["an x that does not vary", [10, 10, 10, 10], "no-spread"],
    ["a y that x gives exactly", [2.1, 2.3, 2.2, 2.5], "perfect-fit"],
  ])("%s", (_, values, code) => expect(refusal([x(values), y], { x: [x(values)], y })).toBe(code));
  it("two columns that say the same", () => {
    const [one, two] = [x([10, 11, 12, 14, 13, 15]), quantity("twice", "GPa", [20, 22, 24, 28, 26, 30])];
    const six = quantity("final_thickness", "mm", [2.1, 2.3, 2.2, 2.5, 2.4, 2.2]);
    expect(refusal([one, two, six], { x: [one, two], y: six })).toBe("collinear");
  });
  it("an allowance for a label that has one group", () => {
    const one = label("species", ["cedar", "cedar", "cedar", "cedar"]);
    expect(refusal([x([10, 11, 12, 14]), y, one], { x: [x([10, 11, 12, 14])], y, allowingFor: [one] })).toBe(
      "one-group",
    );
  });
  it("a method it does not have", () =>
    expect(refusal([x([10, 11, 12, 14]), y], { x: [x([10, 11, 12, 14])], y, by: "guessing" })).toBe("out-of-domain"));
});

const measured = fc.array(
  fc.tuple(fc.double({ min: 5, max: 20, noNaN: true }), fc.double({ min: 1, max: 5, noNaN: true })),
  { minLength: 6, maxLength: 40 },
);
const slopeOf = (
  pairs: readonly (readonly [number, number])[],
  unitX = "GPa",
  scaleX = 1,
  unitY = "mm",
  scaleY = 1,
) => {
  const [x, y] = [
    quantity(
      "x",
      unitX,
      pairs.map(([a]) => a * scaleX),
    ),
    quantity(
      "y",
      unitY,
      pairs.map(([, b]) => b * scaleY),
    ),
  ];
  const finding = ask([x, y], { x: [x], y });
  return finding.kind === "refused" ? null : finding;
};
const scaleOf = (finding: Answer) => Math.max(Math.abs(finding.estimate[0]!.low), Math.abs(finding.estimate[0]!.high));
law("the order of the records changes nothing", [measured], (pairs) => {
  const [one, other] = [slopeOf(pairs), slopeOf([...pairs].reverse())];
  if (one && other) closeTo(other.estimate[0]!.value, one.estimate[0]!.value, 1e-11, { scale: scaleOf(one) });
});
law("another unit is the same slope", [measured], (pairs) => {
  const [one, other] = [slopeOf(pairs), slopeOf(pairs, "MPa", 1000, "cm", 0.1)];
  if (one && other) closeTo(other.estimate[0]!.value * 1e4, one.estimate[0]!.value, 1e-11, { scale: scaleOf(one) });
});
law(
  "a constant added to every y leaves the slope",
  [measured, fc.double({ min: -100, max: 100, noNaN: true })],
  (pairs, shift) => {
    const [one, other] = [slopeOf(pairs), slopeOf(pairs.map(([a, b]) => [a, b + shift] as const))];
    if (one && other) closeTo(other.estimate[0]!.value, one.estimate[0]!.value, 1e-9, { scale: scaleOf(one) });
  },
);
law("a record without a value changes only what is set aside", [measured], (pairs) => {
  const [one, other] = [slopeOf(pairs), slopeOf([...pairs, [Number.NaN, 2]])];
  if (one && other) {
    expect(other.estimate).toEqual(one.estimate);
    expect(other.rows.setAside.length).toBe(one.rows.setAside.length + 1);
  }
});
law(
  "no number of a finding is NaN or infinite",
  [fc.array(fc.tuple(fc.double(), fc.double()), { maxLength: 12 })],
  (pairs) => {
    const finding = slopeOf(pairs);
    if (finding) expect(JSON.stringify(finding)).not.toMatch(/null|NaN|Infinity/);
  },
);

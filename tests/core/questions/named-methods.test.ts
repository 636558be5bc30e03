// `by METHOD`: a question that names a method is answered by it, or declined with what it would need; never by another one in silence.
import { describe, expect, it } from "vitest";
import type { Finding } from "../../../src/core/base/index.ts";
import { answerAgreement, answerComparison, answerRelation, namedMethods } from "../../../src/core/questions/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { grade, label, quantity, tableOf } from "../../support/table-of.ts";

const n = 24;
const wave = (i: number, k: number) => Math.sin(i * k);
const stiffness = quantity(
  "stiffness",
  "GPa",
  Array.from({ length: n }, (_, i) => 11 + 2 * wave(i, 1.7)),
  0.2,
);
const thickness = quantity(
  "thickness",
  "mm",
  Array.from({ length: n }, (_, i) => 2.5 - 0.1 * wave(i, 1.7) + 0.03 * wave(i, 5.3)),
  0.02,
);
const again = quantity(
  "again",
  "mm",
  Array.from({ length: n }, (_, i) => 2.5 - 0.1 * wave(i, 1.7) + 0.03 * wave(i, 4.1)),
);
const maker = label(
  "maker",
  Array.from({ length: n }, (_, i) => (i % 2 ? "north" : "south")),
);
const species = label(
  "species",
  Array.from({ length: n }, (_, i) => ["cedar", "larch", "spruce"][i % 3]!),
);
const tree = label(
  "tree",
  Array.from({ length: n }, (_, i) => `tree ${Math.floor(i / 3)}`),
);
const tone = grade(
  "tone",
  ["1", "2", "3"],
  Array.from({ length: n }, (_, i) => String(1 + ((i * 7) % 3))),
);
const table = tableOf([stiffness, thickness, again, maker, species, tree, tone], { shared: "tree" });
const base = { table, mask: null, asked: 1 } as const;
const used = (found: { kind: string; method?: { id: string; chosenBecause: string } }) =>
  found.kind === "refused" ? "declined" : `${found.method?.id}, ${found.method?.chosenBecause}`;
const asked = (id: string) => `${id}, it was asked for by name`;

describe("a relation", () => {
  it.each(namedMethods.relation)("by %s is answered by it or declined", (by) => {
    const found = answerRelation({
      ...base,
      y: thickness,
      x: [stiffness],
      allowingFor: [],
      within: null,
      powerLaw: by === "power-law",
      by,
    } as never);
    if (found.kind !== "refused" && !/^(ols-multiple|ancova|power-law)$/.test(by)) expect(used(found)).toBe(asked(by));
    if (namedMethods.relation.indexOf(by) >= 6) expect(found.kind).toBe("relation");
  });
});

it("a relation by cluster-robust without anything shared is declined", () => {
  const alone = { ...base, table: tableOf([stiffness, thickness]) };
  const found = answerRelation({
    ...alone,
    y: thickness,
    x: [stiffness],
    allowingFor: [],
    within: null,
    powerLaw: false,
    by: "cluster-robust",
  } as never);
  expect(found).toMatchObject({ kind: "refused", code: "out-of-domain" });
});

describe("a comparison", () => {
  it.each(namedMethods.comparison)("by %s of two groups is answered by it or declined", (by) => {
    for (const y of [thickness, tone]) {
      const found = answerComparison({ ...base, y, across: maker, by });
      expect([asked(by), "declined"]).toContain(used(found));
    }
    expect(
      [thickness, tone].some((y) => answerComparison({ ...base, y, across: maker, by }).kind === "comparison"),
    ).toBe(true);
  });
  it("of three groups by a method for two is declined, and says so", () => {
    const found = answerComparison({ ...base, y: thickness, across: species, by: "welch-t" });
    expect(found).toMatchObject({ kind: "refused", code: "out-of-domain" });
    expect(found.sentence).toContain("two groups");
  });
});

it("an agreement of quantities by a method for grades is declined", () => {
  expect(answerAgreement({ ...base, a: thickness, b: again, by: "weighted-kappa" })).toMatchObject({ kind: "refused" });
  expect(used(answerAgreement({ ...base, a: thickness, b: again, by: "bland-altman" }))).toMatch(/^bland-altman/);
});

describe("an answer by a named method is as wary as any other", () => {
  const relation = (
    by: string,
    columns: Partial<{ y: typeof thickness; x: typeof thickness; table: typeof table }> = {},
  ) =>
    answerRelation({
      ...base,
      table: columns.table ?? table,
      y: columns.y ?? thickness,
      x: [columns.x ?? stiffness],
      allowingFor: [],
      within: null,
      powerLaw: false,
      by,
    } as never) as Finding;
  const codes = (found: Finding) => ("cautions" in found ? found.cautions.map(({ code }) => code) : [found.code]);
  const width = (found: Finding) => {
    const [estimate] = "estimate" in found ? found.estimate : [];
    return (estimate?.high ?? Number.NaN) - (estimate?.low ?? Number.NaN);
  };

  it.each(["york", "deming", "theil-sen", "reduced-major-axis", "bootstrap", "pearson", "spearman", "kendall"])(
    "of pieces that share a tree: %s",
    (by) => expect(codes(relation(by))).toContain("pieces-share"),
  );
  it.each(["mann-whitney", "bootstrap", "hedges-g"])("of two groups whose pieces share a tree: %s", (by) => {
    const found = answerComparison({ ...base, y: thickness, across: maker, by }) as Finding;
    expect(codes(found)).toContain("pieces-share");
  });
  it("draws whole trees where pieces share them", () => {
    const level = quantity(
      "level",
      "GPa",
      Array.from({ length: n }, (_, i) => 11 + 2 * wave(Math.floor(i / 3), 1.7) + 0.1 * wave(i, 2.9)),
    );
    const planed = quantity(
      "planed",
      "mm",
      Array.from({ length: n }, (_, i) => 2.5 + 0.2 * wave(Math.floor(i / 3), 4.1) + 0.01 * wave(i, 5.3)),
    );
    const [apart, together] = [tableOf([level, planed, tree]), tableOf([level, planed, tree], { shared: "tree" })];
    const of = (own: typeof table) => width(relation("bootstrap", { y: planed, x: level, table: own }));
    expect(of(together)).toBeGreaterThan(1.2 * of(apart));
  });
  it("says what each species does by itself, where all together go the other way", () => {
    const at = Array.from({ length: n }, (_, i) => i % 3);
    const x = quantity(
      "stiff",
      "GPa",
      at.map((group, i) => 8 + 3 * group + wave(i, 1.7)),
    );
    const y = quantity(
      "thin",
      "mm",
      at.map((group, i) => 2 + 0.5 * group - 0.1 * wave(i, 1.7) + 0.005 * wave(i, 5.3)),
    );
    for (const by of ["spearman", "theil-sen"])
      expect(codes(relation(by, { x, y, table: tableOf([x, y, species]) }))[0]).toBe("across-contradicts-within");
  });
  it("widens York's interval by what the records scatter beyond their uncertainties, and says so", () => {
    const sure = (column: typeof thickness, by: number) => ({
      ...column,
      uncertainty: column.uncertainty?.map((u) => u / by) ?? null,
    });
    const usual = relation("york");
    expect(codes(usual)).not.toContain("scatter-beyond-uncertainty");
    const tight = relation("york", { x: sure(stiffness, 100), y: sure(thickness, 100) });
    expect(codes(tight)).toContain("scatter-beyond-uncertainty");
    const tighter = relation("york", { x: sure(stiffness, 1000), y: sure(thickness, 1000) });
    closeTo(width(tighter), width(tight), 1e-9);
  });
});

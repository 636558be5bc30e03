// Numbers: tests/reference/stats/cases (R 4.2.2, published figures), read through the maker's questions.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Answer, Finding } from "../../../src/core/base/index.ts";
import {
  answerAgreement,
  answerComparison,
  answerPrediction,
  answerRanking,
  answerRelation,
  answerWord,
  answerWords,
  finding,
  fisherProbabilities,
  questionMethods,
  setAsideInWords,
} from "../../../src/core/questions/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { grade, label, notes, quantity, tableOf } from "../../support/table-of.ts";

const caseOf = (id: string) =>
  JSON.parse(readFileSync(new URL(`../../reference/stats/cases/${id}.json`, import.meta.url), "utf8")) as {
    data: Record<string, never[]>;
    expected: Record<string, { value: never }>;
  };
const base = { mask: null, by: null, asked: 1 } as const;
const answered = (found: Finding): Answer => {
  if (found.kind === "refused") throw new Error(found.sentence);
  return found;
};
const code = (found: Finding) => (found.kind === "refused" ? found.code : "answered");

describe("do species differ", () => {
  const { data, expected } = caseOf("games-howell-tops30");
  const [density, species] = [quantity("density", "kg/m3", data.value!), label("species", data.group!)];
  const table = tableOf([density, species]);
  it("gives all pairs with intervals that hold together (Games–Howell)", () => {
    const found = answered(answerComparison({ table, y: density, across: species, ...base }));
    const pair = found.estimate.find((one) => one.name === "difference of density, larch less cedar")!;
    closeTo(pair.value, expected.difference!.value[0]!, 1e-9);
    closeTo(pair.low, expected.gh_low!.value[0]!, 1e-7);
    expect(found.sentence).toMatch(/^The density of larch is 106 kg\/m³ above that of cedar/);
  });
  it("compares two groups each with its own spread (Welch), and says when it can't tell yet", () => {
    const sleep = caseOf("welch-t-sleep");
    const [a, b] = [sleep.data.a!, sleep.data.b!];
    const [y, drug] = [
      quantity("extra", "h", [...a, ...b]),
      label("drug", [...a.map(() => "one"), ...b.map(() => "two")]),
    ];
    const found = answered(answerComparison({ table: tableOf([y, drug]), y, across: drug, ...base }));
    closeTo(found.estimate.at(-1)!.high, -sleep.expected.ci95_low!.value, 1e-9);
    expect(found.sentence).toMatch(/^Can't tell yet whether the extra differs across drug/);
  });
  it("orders grades by rank and never averages them", () => {
    const levels = ["dull", "fair", "good", "superb"];
    const [loud, by] = [
      grade("loudness", levels, [
        "good",
        "superb",
        "good",
        "superb",
        "good",
        "superb",
        "dull",
        "fair",
        "fair",
        "dull",
        "fair",
        "dull",
      ]),
      label("species", [..."aaaaaabbbbbb"]),
    ];
    const found = answered(answerComparison({ table: tableOf([loud, by]), y: loud, across: by, ...base }));
    expect(found.method.id).toBe("kruskal-wallis");
    expect(found.estimate[0]).toMatchObject({ name: "chance that a is graded above b", value: 1 });
  });
  it("sets a group of one aside with its reason, and refuses a single group", () => {
    const [y, by] = [
      quantity("density", "kg/m3", [400, 410, 420, 350, 360, 500]),
      label("species", ["a", "a", "a", "b", "b", "c"]),
    ];
    const found = answered(answerComparison({ table: tableOf([y, by]), y, across: by, ...base }));
    expect(found.rows.setAside).toEqual([{ row: { table: "tops", row: 6, piece: "T-6" }, why: "group-of-one" }]);
    expect(setAsideInWords("group-of-one")).toContain("no other record");
    const one = label("species", ["a", "a", "a", "a", "a", "a"]);
    expect(code(answerComparison({ table: tableOf([y, one]), y, across: one, ...base }))).toBe("one-group");
  });
});

it("gives bias and limits of agreement of two ways of measuring (Bland and Altman 1986)", () => {
  const { data, expected } = caseOf("bland-altman-1986");
  const [a, b] = [quantity("first_meter", "mm", data.a!), quantity("second_meter", "mm", data.b!)];
  const found = answered(answerAgreement({ table: tableOf([a, b]), a, b, ...base }));
  for (const [at, name] of ["bias", "limit_low", "limit_high"].entries())
    closeTo(found.estimate[at]!.value, expected[name]!.value, 1e-9);
  expect(code(answerAgreement({ table: tableOf([a, b]), a, b: quantity("mass", "g", data.b!), ...base }))).toBe(
    "wrong-dimension",
  );
});

describe("what to expect of the next instrument", () => {
  const { data, expected } = caseOf("ols-simple-tops12");
  const [x, y] = [quantity("stiffness_along", "GPa", data.x!), quantity("final_thickness", "mm", data.y!)];
  const ask = (gigapascals: number) =>
    answerPrediction({ table: tableOf([x, y]), y, when: [{ x, is: gigapascals * 1e9 }], group: null, ...base });
  it("gives the interval that holds it 95 times in 100", () => {
    const [next] = answered(ask(12)).estimate;
    closeTo(next!.value, expected.fit!.value[1]!, 1e-9);
    closeTo(next!.low, expected.pred_low!.value[1]!, 1e-9);
    closeTo(next!.high, expected.pred_high!.value[1]!, 1e-9);
  });
  it("warns beyond the records and refuses far beyond them", () => {
    expect(answered(ask(16)).cautions.map((one) => one.code)).toContain("beyond-records");
    expect(code(ask(40))).toBe("out-of-domain");
  });
});

it("ranks the shelf and shows ties as ties", () => {
  const y = quantity("density", "kg/m3", [400, 450, 448, 300], 5);
  const found = answered(answerRanking({ table: tableOf([y]), y, ...base }));
  expect(found.estimate.map((one) => one.name)).toEqual(["T-2", "T-3", "T-1", "T-4"]);
  expect(found.sentence).toMatch(/^T-2 \(450 ± 5 kg\/m³\) and T-3 \(448 ± 5 kg\/m³\) share the highest density/);
});

it("counts families of words by group, and hears 'not bright'", () => {
  const said = [...Array<string>(8).fill("Very bright, loud"), ...Array<string>(8).fill("not bright; dark")];
  const [words, by] = [
    notes("notes", said),
    label(
      "species",
      said.map((_, i) => (i < 8 ? "cedar" : "spruce")),
    ),
  ];
  const lexicon = new Map([
    ["bright", ["bright", "brilliant"]],
    ["dark", ["dark"]],
  ]);
  const found = answered(answerWords({ table: tableOf([words, by]), notes: words, across: by, lexicon, ...base }));
  expect(found.estimate[0]).toMatchObject({ name: "notes that say bright in cedar", value: 1 });
  expect(found.estimate[1]).toMatchObject({ name: "notes that say bright in spruce", value: 0 });
  const density = quantity(
    "density",
    "kg/m3",
    said.map((_, i) => (i < 8 ? 350 : 420) + (i % 3)),
  );
  expect(
    answered(
      answerWord({ table: tableOf([words, density]), notes: words, word: "bright", x: density, lexicon, ...base }),
    ).sentence,
  ).toMatch(/^Pieces whose notes say bright \(8 of 16\) have 70\.\d+ kg\/m³ less density/);
  closeTo(fisherProbabilities(3, 4, 1, 4).twoSided, 0.4857142857142858, 1e-12); // the lady tasting tea, Fisher (1935)
});

it("answers by the method that was asked for", () => {
  const { data, expected } = caseOf("theil-sen-tops15");
  const [x, y] = [quantity("stiffness_along", "GPa", data.x!), quantity("final_thickness", "mm", data.y!)];
  const found = answered(
    answerRelation({
      table: tableOf([x, y]),
      y,
      x: [x],
      allowingFor: [],
      within: null,
      powerLaw: false,
      mask: null,
      by: "theil-sen",
      asked: 1,
    }),
  );
  closeTo(found.estimate[0]!.low, expected.ci_low!.value, 1e-9);
  expect(found.method).toMatchObject({ id: "theil-sen", chosenBecause: "it was asked for by name" });
});

it("builds no finding from a number that is not finite", () => {
  const parts = {
    kind: "relation",
    table: tableOf([quantity("x", "mm", [1])]),
    sentence: "",
    rows: { used: [], setAside: [] },
    method: questionMethods[0]!,
    chosenBecause: "",
    columns: [],
  } as const;
  expect(
    finding({ ...parts, estimate: [{ name: "slope", value: Number.NaN, low: 0, high: 1, level: 0.95, unit: "1" }] }),
  ).toMatchObject({ kind: "refused", code: "not-finite" });
});
it("sorts cautions by gravity and gives each its sentence", () => {
  const parts = {
    kind: "relation",
    table: tableOf([quantity("x", "mm", [1])]),
    sentence: "",
    estimate: [],
    rows: { used: [], setAside: [] },
    method: questionMethods[0]!,
    chosenBecause: "",
    columns: [],
  } as const;
  const found = answered(
    finding({
      ...parts,
      cautions: [
        { code: "records-set-aside", facts: { count: 2 } },
        { code: "few-records", facts: { have: 4, need: 10 } },
      ],
    }),
  );
  expect(found.cautions.map((one) => one.code)).toEqual(["few-records", "records-set-aside"]);
  expect(found.cautions[0]!.sentence).toContain("4 records");
});
it("has a catalogue of methods with unique ids, each with a source and fields", () => {
  expect(new Set(questionMethods.map((one) => one.id)).size).toBe(questionMethods.length);
  for (const one of questionMethods)
    expect(one.source.citation.length * Object.keys(one.fields).length).toBeGreaterThan(0);
});

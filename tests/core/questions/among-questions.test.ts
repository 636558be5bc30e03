// The ledger: an answer is judged as one of all the questions asked of its records, so that twenty looks at nothing find nothing.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Estimate, Finding } from "../../../src/core/base/index.ts";
import { generatorFromSeed, normalQuantile, tQuantile } from "../../../src/core/numerics/index.ts";
import {
  answerComparison,
  answerRelation,
  directionOf,
  intervalAmong,
  levelAmong,
} from "../../../src/core/questions/index.ts";
import { judgeRule, type ResolvedRule } from "../../../src/core/verdicts/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";
import { date, label, quantity, tableOf } from "../../support/table-of.ts";

const slope: Estimate = { name: "slope", value: 2, low: 0.5, high: 3.5, level: 0.95, unit: "1" };
const relation = (x: readonly number[], y: readonly number[], asked: number): Finding => {
  const [own, other] = [quantity("stiffness", "GPa", x), quantity("thickness", "mm", y)];
  return answerRelation({
    table: tableOf([own, other]),
    y: other,
    x: [own],
    allowingFor: [],
    within: null,
    powerLaw: false,
    mask: null,
    by: null,
    asked,
  });
};
const claims = (found: Finding) => !found.sentence.startsWith("Can't tell yet");

describe("the interval of one of many questions", () => {
  it("holds at Bonferroni's level: t with the degrees of freedom of the estimate, else normal", () => {
    closeTo(levelAmong(20), 0.9975, 1e-14);
    const among = intervalAmong({ ...slope, degreesOfFreedom: 12 }, 20);
    closeTo(2 - among.low, (1.5 * tQuantile(0.99875, 12)) / tQuantile(0.975, 12), 1e-12);
    closeTo(intervalAmong(slope, 20).high - 2, (1.5 * normalQuantile(0.99875)) / normalQuantile(0.975), 1e-12);
    expect(intervalAmong(slope, 1)).toEqual(slope);
  });
  law(
    "never tells more with more questions",
    [
      fc.double({ min: -5, max: 5, noNaN: true }),
      fc.double({ min: 0.01, max: 5, noNaN: true }),
      fc.integer({ min: 1, max: 40 }),
    ],
    (value, half, asked) => {
      const one = { ...slope, value, low: value - half, high: value + half, degreesOfFreedom: 9 };
      const [few, many] = [intervalAmong(one, asked), intervalAmong(one, asked + 1)];
      return many.low < few.low && many.high > few.high && (directionOf(few) !== 0 || directionOf(many) === 0);
    },
  );
});

describe("an answer", () => {
  const x = Array.from({ length: 20 }, (_, i) => 9 + (i % 10) / 2);
  const chance = generatorFromSeed(11);
  const noise = x.map(() => chance.next() - 0.5);
  const faint = x.map((each, i) => 2 + 0.085 * each + noise[i]!);
  it("that tells alone and not among many says both", () => {
    expect(claims(relation(x, faint, 1))).toBe(true);
    const found = relation(x, faint, 20);
    expect(found.sentence).toMatch(/^Can't tell yet .* as one of 20 questions asked of these records it does not\.$/);
    expect("checks" in found && found.checks.find(({ id }) => id === "one-of-many-questions")?.passed).toBe(false);
  });
  it("that stands out far enough stands among many", () => {
    const clear = x.map((each, i) => 2 + 0.5 * each + noise[i]!);
    const found = relation(x, clear, 20);
    expect(claims(found)).toBe(true);
    expect("checks" in found && found.checks.find(({ id }) => id === "one-of-many-questions")?.passed).toBe(true);
  });
  it("of a comparison is held to the same", () => {
    const y = quantity(
      "thickness",
      "mm",
      faint.map((each, i) => each + (i % 2) * 0.25),
    );
    const across = label(
      "maker",
      x.map((_, i) => (i % 2 ? "north" : "south")),
    );
    const ask = (asked: number) =>
      answerComparison({ table: tableOf([y, across]), y, across, mask: null, by: null, asked });
    const [alone, among] = [ask(1), ask(12)];
    expect([claims(alone), claims(among)]).toEqual([true, false]);
  });
  it("about nothing claims something in one notebook of twenty at most, however many questions it asks", () => {
    const draw = generatorFromSeed(5);
    const random = () => Array.from({ length: 16 }, () => draw.next() + draw.next() + draw.next());
    const share = (asked: number) => {
      const notebooks = 150;
      const wrong = Array.from({ length: notebooks }, () =>
        Array.from({ length: 8 }, () => claims(relation(random(), random(), asked))).includes(true),
      ).filter(Boolean).length;
      return wrong / notebooks;
    };
    expect(share(8)).toBeLessThan(0.05 + 3 * Math.sqrt((0.05 * 0.95) / 150));
    expect(share(1)).toBeGreaterThan(0.2);
  });
});

describe("a rule", () => {
  const x = Array.from({ length: 20 }, (_, i) => 9 + (i % 10) / 2);
  const chance = generatorFromSeed(11);
  const y = quantity(
    "thickness",
    "mm",
    x.map((each) => 2 + 0.085 * each + chance.next() - 0.5),
  );
  const own = quantity("stiffness", "GPa", x);
  const judge = (stated: ResolvedRule["stated"], asked: number) =>
    judgeRule({
      table: tableOf(
        [
          own,
          y,
          date(
            "finished_on",
            x.map(() => 20),
          ),
        ],
        { finished: "finished_on" },
      ),
      rule: {
        claims: "moves-with",
        x: own,
        xMoves: "rises",
        y,
        yMoves: "rises",
        byAtLeast: null,
        words: "",
        stated,
        within: null,
        mask: null,
      },
      asked,
    });
  it("without a date is one of the many", () => {
    expect(judge(null, 1)).toMatchObject({ verdict: "kept" });
    expect(judge(null, 20)).toMatchObject({
      verdict: "cannot-tell",
      sentence: expect.stringContaining("as one of 20 questions"),
    });
  });
  it("that was there before its records is a test of its own", () => {
    expect(judge({ day: 10, text: "1970-01-11" }, 20)).toMatchObject({ verdict: "kept" });
  });
});

import { expect, it } from "vitest";
import type { QuantityColumn } from "../../../src/core/columns/index.ts";
import { generatorFromSeed } from "../../../src/core/numerics/index.ts";
import { judgeRule, type ResolvedRule } from "../../../src/core/verdicts/index.ts";
import { date, label, quantity, tableOf } from "../../support/table-of.ts";

// Thirty tops: stiffness in GPa, thickness in mm, the first half finished on day 10, the second on day 20.
const chance = generatorFromSeed(7);
const noise = (size: number) => (chance.next() - 0.5) * size;
const stiffness = Array.from({ length: 30 }, (_, at) => 9 + (at % 10) / 2);
const falling = stiffness.map((each) => 3.4 - 0.08 * each + noise(0.1));
const turned = falling.map((each, at) =>
  at < 15 ? each : 3.4 - 0.08 * 10 + 0.08 * (stiffness[at] ?? 0) + noise(0.05),
);
const days = stiffness.map((_, at) => (at < 15 ? 10 : 20));

const x = quantity("stiffness", "GPa", stiffness);
const tableWith = (y: readonly number[]) => {
  const column = quantity("thickness", "mm", y);
  return { y: column, table: tableOf([x, column, date("finished_on", days)], { finished: "finished_on" }) };
};
const rule = (y: QuantityColumn, statedDay: number | null): ResolvedRule => ({
  claims: "moves-with",
  x,
  xMoves: "rises",
  y,
  yMoves: "falls",
  byAtLeast: null,
  words: "when stiffness rises, thickness falls",
  stated: statedDay === null ? null : { day: statedDay, text: "1970-01-16" },
  within: null,
  mask: null,
});
const judged = (y: readonly number[], statedDay: number | null) => {
  const made = tableWith(y);
  const found = judgeRule({ table: made.table, rule: rule(made.y, statedDay), asked: 1 });
  if (found.kind !== "verdict") throw new Error(found.kind);
  return found;
};

it("keeps a rule that goes on holding after it was stated", () => {
  const found = judged(falling, 15);
  expect(found.verdict).toBe("kept");
  expect(found.rows.used).toHaveLength(15);
  expect(found.estimate[0]!.high).toBeLessThan(0);
});

it("breaks a rule that held before it was stated and turned round afterwards", () => {
  const found = judged(turned, 15);
  expect(found.verdict).toBe("broken");
  expect(found.estimate.at(-1)!.name).toContain("up to the day it was stated");
  expect(found.estimate.at(-1)!.high).toBeLessThan(0);
});

it("cannot tell when nothing was finished after the rule was stated, and says so", () => {
  const found = judged(falling, 30);
  expect(found.verdict).toBe("cannot-tell");
  expect(found.cautions.map((each) => each.code)).toContain("stated-after");
});

it("uses every record of a rule without a date", () => {
  expect(judged(falling, null).rows.used).toHaveLength(30);
});

/** "when it is light, expect it is short", met and held at the records where the lists have 1. */
const judgeHolding = (
  table: ReturnType<typeof tableOf>,
  atLeast: { readonly hold: number; readonly of: number } | null,
  met: Int8Array,
  held: Int8Array,
) =>
  judgeRule({
    table,
    asked: 1,
    rule: {
      claims: "holds",
      words: "",
      stated: null,
      within: null,
      mask: null,
      atLeast,
      when: { words: "it is light", holds: met },
      expect: { words: "it is short", holds: held },
    },
  });

it("needs a rate that surely reaches the share claimed", () => {
  const y = quantity(
    "sustain",
    "s",
    Array.from({ length: 20 }, (_, at) => (at < 18 ? 2 : 4)),
  );
  const table = tableOf([y]);
  const holds = (hold: number, of: number, expected: number): ReturnType<typeof judgeRule> =>
    judgeHolding(
      table,
      { hold, of },
      new Int8Array(20).fill(1),
      Int8Array.from({ length: 20 }, (_, at) => (at < expected ? 1 : 0)),
    );
  expect(holds(1, 2, 18)).toMatchObject({ verdict: "kept" }); // Wilson 0.699 … 0.972
  expect(holds(9, 10, 18)).toMatchObject({ verdict: "cannot-tell" });
  expect(holds(9, 10, 8)).toMatchObject({ verdict: "broken" });
});

it("without a share claimed sets how often it holds beside how often it holds anyway, both of them uncertain", () => {
  const table = tableOf([
    quantity(
      "sustain",
      "s",
      Array.from({ length: 20 }, () => 2),
    ),
  ]);
  const beside = (held: number, otherwise: number) =>
    judgeHolding(
      table,
      null,
      Int8Array.from({ length: 20 }, (_, at) => (at < 10 ? 1 : 0)),
      Int8Array.from({ length: 20 }, (_, at) => (at % 10 < (at < 10 ? held : otherwise) ? 1 : 0)),
    );
  // Wilson's 0.596 to 0.982 alone would clear 5 of 10; Newcombe's difference runs from -0.003.
  expect(beside(9, 5)).toMatchObject({ verdict: "cannot-tell", method: { id: "proportion-difference" } });
  expect(beside(10, 2)).toMatchObject({ verdict: "kept" });
  expect(beside(1, 9)).toMatchObject({ verdict: "broken" });
});

it("compares two groups by the interval of their difference", () => {
  const y = quantity(
    "density",
    "kg/m3",
    Array.from({ length: 20 }, (_, at) => (at < 10 ? 420 : 360) + (at % 5)),
  );
  const groups = label(
    "species",
    Array.from({ length: 20 }, (_, at) => (at < 10 ? "spruce" : "cedar")),
  );
  const table = tableOf([y, groups]);
  const claim = (more: string, less: string, byAtLeast: number | null) =>
    judgeRule({
      table,
      asked: 1,
      rule: {
        claims: "has-more",
        groups,
        more,
        less,
        y,
        byAtLeast: byAtLeast === null ? null : { value: byAtLeast, unit: "kg/m3" },
        words: "",
        stated: null,
        within: null,
        mask: null,
      },
    });
  expect(claim("spruce", "cedar", null)).toMatchObject({ verdict: "kept", method: { id: "welch-t" } });
  expect(claim("cedar", "spruce", null)).toMatchObject({ verdict: "broken" });
  expect(claim("spruce", "cedar", 60)).toMatchObject({ verdict: "cannot-tell" });
});

it("calls two ways of measuring the same only when the interval lies inside the margin", () => {
  const a = quantity(
    "by_tap",
    "GPa",
    Array.from({ length: 12 }, (_, at) => 10 + at),
  );
  const b = quantity(
    "by_load",
    "GPa",
    Array.from({ length: 12 }, (_, at) => 10 + at + (at % 2 ? 0.1 : -0.1)),
  );
  const table = tableOf([a, b]);
  const claim = (margin: number) =>
    judgeRule({
      table,
      asked: 1,
      rule: {
        claims: "same-within",
        a,
        b,
        tolerance: { value: margin, unit: "GPa" },
        words: "",
        stated: null,
        within: null,
        mask: null,
      },
    });
  expect(claim(0.5e9)).toMatchObject({ verdict: "kept" });
  expect(claim(0.02e9)).toMatchObject({ verdict: "cannot-tell" });
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { mixedModel } from "../../../../src/core/questions/methods/mixed-model.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

// Five trees of three boards: the spread between trees is plain to see.
const y = [10.1, 10.9, 9.8, 14.2, 13.1, 13.6, 8.3, 9.1, 8.8, 12.4, 11.2, 12.1, 15.3, 14.1, 14.9];
const x1 = [1.2, 2.9, 0.7, 2.2, 0.4, 1.9, 0.3, 2.5, 1.1, 2.7, 0.9, 1.6, 2.8, 0.5, 1.4];
const group = y.map((_, i) => "abcde"[Math.floor(i / 3)] ?? "");
const listOf = (value: unknown) => value as number[];
const agree = (one: unknown, other: readonly number[], relative = 1e-6) => {
  expect(listOf(one)).toHaveLength(other.length);
  other.forEach((expected, i) => {
    closeTo(listOf(one)[i] ?? Number.NaN, expected, relative, { scale: Math.max(1, Math.abs(expected)) });
  });
};
const meanOf = (list: readonly number[]) => list.reduce((sum, v) => sum + v, 0) / list.length;

/** Mean squares of a balanced table, groups of n one after another. */
function meanSquares(list: readonly number[], n: number) {
  const groups = Array.from({ length: list.length / n }, (_, g) => list.slice(g * n, g * n + n));
  const common = meanOf(list);
  const between = groups.reduce((sum, each) => sum + n * (meanOf(each) - common) ** 2, 0) / (groups.length - 1);
  const rest = groups.flatMap((each) => each.map((v) => (v - meanOf(each)) ** 2)).reduce((sum, v) => sum + v, 0);
  return { between, within: rest / (list.length - groups.length), groups: groups.length };
}

const balanced = fc.tuple(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 3, max: 8 })).chain(([n, groups]) =>
  fc.record({
    n: fc.constant(n),
    list: fc.array(fc.integer({ min: -999, max: 999 }), { minLength: n * groups, maxLength: n * groups }),
  }),
);

law("a balanced table has the closed form of the analysis of variance", [balanced], ({ n, list }) => {
  const { between, within, groups } = meanSquares(list, n);
  fc.pre(within > 1 && Math.abs(between / within - 1) > 1e-3);
  const found = fieldsOf(mixedModel, { y: list, group: list.map((_, i) => `g${Math.floor(i / n)}`) });
  agree(found.coef, [meanOf(list)], 1e-9);
  if (between < within) {
    expect(found.singular).toBe(true);
    expect(found.sd_between).toBe(0);
    return;
  }
  closeTo(Number(found.sd_within) ** 2, within, 1e-7);
  closeTo(Number(found.sd_between) ** 2, (between - within) / n, 1e-6, { scale: between / n });
  agree(found.se, [Math.sqrt(between / list.length)]);
  agree(found.df_satterthwaite, [groups - 1], 1e-4);
});

law(
  "the order of rows and the names of groups change nothing",
  [fc.shuffledSubarray([...y.keys()], { minLength: y.length })],
  (order) => {
    const plain = fieldsOf(mixedModel, { y, x1, group });
    const names: Record<string, string> = { a: "v", b: "w", c: "x", d: "y", e: "z" };
    const other = fieldsOf(mixedModel, {
      y: order.map((i) => y[i]),
      x1: order.map((i) => x1[i]),
      group: order.map((i) => names[group[i] ?? ""]),
    });
    for (const name of ["coef", "se", "df_satterthwaite", "group_effects"]) agree(other[name], listOf(plain[name]));
    closeTo(Number(other.loglik_reml), Number(plain.loglik_reml), 1e-10);
  },
  40,
);

law(
  "y and x in other units, from other zeros",
  [fc.double({ min: 0.01, max: 100, noNaN: true }), fc.integer({ min: -1000, max: 1000 })],
  (scale, shift) => {
    const plain = fieldsOf(mixedModel, { y, x1, group });
    const other = fieldsOf(mixedModel, { y: y.map((v) => v * scale + shift), x1: x1.map((v) => v / 4 + 3), group });
    const [constant = 0, slope = 0] = listOf(plain.coef);
    closeTo(listOf(other.coef)[1] ?? 0, 4 * slope * scale, 1e-6);
    closeTo(listOf(other.coef)[0] ?? 0, constant * scale + shift - 12 * slope * scale, 1e-6, {
      scale: 100 * scale + Math.abs(shift),
    });
    closeTo(Number(other.sd_between), Number(plain.sd_between) * scale, 1e-6);
    closeTo(Number(other.icc), Number(plain.icc), 1e-6);
    closeTo(listOf(other.df_satterthwaite)[1] ?? 0, listOf(plain.df_satterthwaite)[1] ?? 0, 1e-4);
  },
  40,
);

it("no spread between groups is said and warned of", () => {
  const inputs = { y: [1, 2, 3, 1, 2, 3, 1, 2, 3], group: [..."aaabbbccc"] };
  const found = fieldsOf(mixedModel, inputs);
  expect(found).toMatchObject({ singular: true, sd_between: 0, icc: 0, df_satterthwaite: [null] });
  expect(mixedModel.cautions?.(inputs, found).map(({ code }) => code)).toEqual(["no-spread-between-groups"]);
  expect(mixedModel.cautions?.({ y, group }, fieldsOf(mixedModel, { y, group }))).toEqual([]);
});

it("groups that are not named in the order follow those that are", () => {
  const plain = fieldsOf(mixedModel, { y, x1, group });
  const some = fieldsOf(mixedModel, { y, x1, group, group_order: ["d", "b"] });
  expect(some.group_names).toEqual(["d", "b", "a", "c", "e"]);
  agree(
    some.group_effects,
    [3, 1, 0, 2, 4].map((at) => listOf(plain.group_effects)[at] ?? Number.NaN),
  );
});

it("refuses what cannot be told", () => {
  const codeOf = (inputs: Record<string, unknown>) => refusalOf(mixedModel, inputs);
  const pairs = [..."aabbcc"];
  expect(codeOf({ y: [1, 1, 2, 2, 3, 3], group: pairs })).toBe("perfect-fit");
  expect(codeOf({ y: [5, 5, 5, 5, 5, 5], group: pairs })).toBe("perfect-fit");
  expect(codeOf({ y: [1, 2, 3, 4, 5, 6], x1: [1, 2, 3, 4, 5, 6], group: pairs })).toBe("perfect-fit");
  expect(codeOf({ y: [1, 2, 3, 4, 5, 7], group: [..."abcdef"] })).toBe("out-of-domain");
  expect(codeOf({ y: [1, 2, 3, 4, 5, 7], group: [..."aaaaaa"] })).toBe("one-group");
  expect(codeOf({ y, x1, x2: x1.map((v) => 2 * v + 1), group })).toBe("collinear");
  expect(codeOf({ y: [1, 2], group: ["a", "b"] })).toBe("too-few-records");
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { krippendorffAlpha } from "../../../../src/core/questions/methods/krippendorff-alpha.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

type Grade = number | null;
const metrics = {
  nominal: (a: number, b: number) => (a === b ? 0 : 1),
  interval: (a: number, b: number) => (a - b) ** 2,
  ratio: (a: number, b: number) => (a + b === 0 ? 0 : ((a - b) / (a + b)) ** 2),
};

/** Alpha by its matrix of coincidences: the other definition than that by pairs within pieces. */
function byCoincidences(ratings: readonly (readonly Grade[])[]): Record<string, number> {
  const pieces = ratings[0]!
    .map((_, piece) => ratings.map((list) => list[piece]!).filter((grade): grade is number => grade !== null))
    .filter((grades) => grades.length > 1);
  const levels = [...new Set(pieces.flat())].sort((a, b) => a - b);
  const o = levels.map((a) =>
    levels.map((b) =>
      pieces.reduce((sum, grades) => {
        const [first, second] = [grades.filter((g) => g === a).length, grades.filter((g) => g === b).length];
        return sum + (first * (a === b ? first - 1 : second)) / (grades.length - 1);
      }, 0),
    ),
  );
  const margins = o.map((row) => row.reduce((sum, each) => sum + each, 0));
  const n = margins.reduce((sum, each) => sum + each, 0);
  const ordinal = (a: number, b: number) => {
    const [i, j] = [levels.indexOf(Math.min(a, b)), levels.indexOf(Math.max(a, b))];
    const between = margins.slice(i, j + 1).reduce((sum, each) => sum + each, 0);
    return a === b ? 0 : (between - (margins[i]! + margins[j]!) / 2) ** 2;
  };
  const alpha = (metric: (a: number, b: number) => number) => {
    let [seen, chance] = [0, 0];
    for (const [i, a] of levels.entries())
      for (const [j, b] of levels.entries()) {
        seen += o[i]![j]! * metric(a, b);
        chance += (margins[i]! * margins[j]! * metric(a, b)) / (n - 1);
      }
    return 1 - seen / chance;
  };
  return {
    ...Object.fromEntries(Object.entries(metrics).map(([name, m]) => [name, alpha(m)])),
    ordinal: alpha(ordinal),
  };
}

const grade = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 0, max: 5 }) },
  { weight: 1, arbitrary: fc.constant(null) },
);
const ratings = fc
  .tuple(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 3, max: 12 }))
  .chain(([graders, pieces]) =>
    fc.array(fc.array(grade, { minLength: pieces, maxLength: pieces }), { minLength: graders, maxLength: graders }),
  )
  .filter((given) => refusalOf(krippendorffAlpha, { ratings: given }) === null);

const scales = ["nominal", "ordinal", "interval", "ratio"] as const;
const same = (
  one: Readonly<Record<string, number>>,
  other: Readonly<Record<string, number>>,
  names: readonly string[] = scales,
) => {
  for (const name of names) closeTo(other[name]!, one[name]!, 1e-10, { scale: 1 });
};

law("alpha is what its matrix of coincidences gives", [ratings], (given) =>
  same(byCoincidences(given), fieldsOf(krippendorffAlpha, { ratings: given })),
);

law("the order of graders and of pieces, and one more ungraded piece, change nothing", [ratings], (given) => {
  const one = fieldsOf(krippendorffAlpha, { ratings: given });
  same(one, fieldsOf(krippendorffAlpha, { ratings: given.toReversed() }));
  same(one, fieldsOf(krippendorffAlpha, { ratings: given.map((list) => list.toReversed()) }));
  same(one, fieldsOf(krippendorffAlpha, { ratings: given.map((list) => [...list, null]) }));
});

law(
  "a shift and a stretch leave the interval scale, a stretch the ratio scale, any rising change the ordinal",
  [ratings],
  (given) => {
    const one = fieldsOf(krippendorffAlpha, { ratings: given });
    const made = (change: (g: number) => number) =>
      fieldsOf(krippendorffAlpha, { ratings: given.map((list) => list.map((g) => (g === null ? null : change(g)))) });
    same(
      one,
      made((g) => 3 * g + 7),
      ["nominal", "ordinal", "interval"],
    );
    same(
      one,
      made((g) => 3 * g),
      scales,
    );
    same(
      one,
      made((g) => g ** 3),
      ["nominal", "ordinal"],
    );
  },
);

law("grades in words with their order are grades of that order", [ratings], (given) => {
  const words = ["dull", "plain", "fair", "good", "fine", "best"];
  const named = given.map((list) => list.map((g) => (g === null ? null : words[g]!)));
  const one = fieldsOf(krippendorffAlpha, { ratings: given, levels: [0, 1, 2, 3, 4, 5] });
  same(one, fieldsOf(krippendorffAlpha, { ratings: named, levels: words }), ["nominal", "ordinal"]);
  expect(fieldsOf(krippendorffAlpha, { ratings: named })).toMatchObject({ ordinal: null, interval: null, ratio: null });
});

it("is one where all agree", () => {
  const list = [1, 2, 3, 4, 5, 1, 2, 3];
  same({ nominal: 1, ordinal: 1, interval: 1, ratio: 1 }, fieldsOf(krippendorffAlpha, { ratings: [list, list, list] }));
});

it.each([
  [[[1, 2, 3]], "out-of-domain"],
  [
    [
      [1, 2, 3],
      [1, 2],
    ],
    "out-of-domain",
  ],
  [
    [
      [3, 3, 3],
      [3, 3, 3],
    ],
    "no-spread",
  ],
  [
    [
      [1, null, 3],
      [null, 2, null],
    ],
    "too-few-records",
  ],
  [
    [
      [1, Number.POSITIVE_INFINITY],
      [1, 2],
    ],
    "not-finite",
  ],
  ["no table", "out-of-domain"],
])("declines %j", (given, code) => expect(refusalOf(krippendorffAlpha, { ratings: given })).toBe(code));

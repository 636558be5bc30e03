import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fisherExact } from "../../../../src/core/questions/methods/fisher-exact.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

/** Binomial coefficients as whole numbers, so that nothing is rounded before the last division. */
function choose(n: number, k: number): bigint {
  let result = 1n;
  for (let i = 1; i <= k; i++) result = (result * BigInt(n - k + i)) / BigInt(i);
  return result;
}
const ratio = (part: bigint, whole: bigint) => Number((part * 10n ** 40n) / whole) / 1e40;

/** All three p of a 2 x 2 table by writing down every table with its margins. */
function byEnumeration([[a, b], [c, d]]: readonly [readonly [number, number], readonly [number, number]]) {
  const weight = (k: number) => choose(a + b, k) * choose(c + d, a + c - k);
  let [all, twoSided, greater, less] = [0n, 0n, 0n, 0n];
  for (let k = Math.max(0, a - d); k <= Math.min(a + b, a + c); k++) {
    all += weight(k);
    if (weight(k) <= weight(a)) twoSided += weight(k);
    if (k >= a) greater += weight(k);
    if (k <= a) less += weight(k);
  }
  return { p: ratio(twoSided, all), p_greater: ratio(greater, all), p_less: ratio(less, all) };
}

const cell = fc.integer({ min: 0, max: 40 });
const square = fc
  .tuple(cell, cell, cell, cell)
  .filter(([a, b, c, d]) => a + b + c + d > 0)
  .map(
    ([a, b, c, d]) =>
      [
        [a, b],
        [c, d],
      ] as [[number, number], [number, number]],
  );
const inner = square.filter(([[a, b], [c, d]]) => Math.min(a, b, c, d) > 0);

describe("two rows and two columns", () => {
  law("p is what writing down every table in whole numbers gives", [square], (table) => {
    const [got, want] = [fieldsOf(fisherExact, { table }), byEnumeration(table)];
    for (const [name, value] of Object.entries(want)) closeTo(got[name] ?? Number.NaN, value, 1e-11);
  });

  law("swapping the rows inverts the odds ratio with its interval, swaps the sides and leaves p", [inner], (table) => {
    const [one, other] = [fieldsOf(fisherExact, { table }), fieldsOf(fisherExact, { table: table.toReversed() })];
    closeTo(other.p!, one.p!, 1e-11);
    closeTo(other.p_less!, one.p_greater!, 1e-11);
    closeTo(other.odds_ratio_sample!, 1 / one.odds_ratio_sample!, 1e-12);
    closeTo(other.odds_ratio_conditional!, 1 / one.odds_ratio_conditional!, 1e-9);
    closeTo(other.ci95_low!, 1 / one.ci95_high!, 1e-9);
  });

  law("turning the table leaves everything", [square], ([[a, b], [c, d]]) => {
    const one = fieldsOf(fisherExact, {
      table: [
        [a, b],
        [c, d],
      ],
    });
    const other = fieldsOf(fisherExact, {
      table: [
        [a, c],
        [b, d],
      ],
    });
    for (const name of Object.keys(one).filter((each) => typeof one[each] === "number" && one[each] !== 0))
      closeTo(other[name]!, one[name]!, 1e-9);
  });

  law("the interval is where the test at its own limit has half of what is left outside", [inner], (table) => {
    const { ci95_low, ci95_high } = fieldsOf(fisherExact, { table, level: 0.9 });
    closeTo(fieldsOf(fisherExact, { table, null_odds_ratio: ci95_low }).p_greater!, 0.05, 1e-9);
    closeTo(fieldsOf(fisherExact, { table, null_odds_ratio: ci95_high }).p_less!, 0.05, 1e-9);
  });

  it("gives the odds ratio that fisher.test prints for eight cups of tea", () => {
    closeTo(
      fieldsOf(fisherExact, {
        table: [
          [3, 1],
          [1, 3],
        ],
      }).odds_ratio_conditional!,
      6.408309,
      2e-6,
    );
  });

  // R 4.2.2, stats::fisher.test(or = 2) and (alternative = "less", conf.level = 0.9): the limit there is coarse, 1e-5.
  it("tests another odds ratio and looks on one side as R does", () => {
    const table = [
      [7, 2],
      [3, 9],
    ];
    closeTo(fieldsOf(fisherExact, { table, null_odds_ratio: 2 }).p!, 0.18737976144671, 1e-7);
    closeTo(fieldsOf(fisherExact, { table, null_odds_ratio: 2, alternative: "greater" }).p!, 0.123407322887229, 1e-9);
    const less = fieldsOf(fisherExact, { table, level: 0.9, alternative: "less" });
    closeTo(less.ci95_high!, 59.522664392962, 1e-2);
    expect(less.ci95_low).toBe(0);
  });

  it("keeps its odds ratio where no count but those far from the middle is likely", () => {
    const [a, b, c, d] = [2637, 4174, 1891, 100];
    const got = fieldsOf(fisherExact, {
      table: [
        [a, b],
        [c, d],
      ],
    });
    // For thousands of records the conditional ratio comes near the plain one, and its logarithm's error is Woolf's.
    closeTo(got.odds_ratio_conditional!, got.odds_ratio_sample!, 2e-3);
    const woolf = 1.959964 * Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d);
    closeTo(Math.log(got.ci95_high! / got.odds_ratio_conditional!), woolf, 0.05);
    closeTo(Math.log(got.odds_ratio_conditional! / got.ci95_low!), woolf, 0.05);
  });

  it("withholds an odds ratio without bounds, and says one for an empty column", () => {
    expect(
      fieldsOf(fisherExact, {
        table: [
          [5, 0],
          [3, 4],
        ],
      }),
    ).toMatchObject({ odds_ratio_conditional: null, ci95_high: null });
    expect(
      fieldsOf(fisherExact, {
        table: [
          [0, 5],
          [3, 4],
        ],
      }),
    ).toMatchObject({ odds_ratio_conditional: 0, ci95_low: 0 });
    expect(
      fieldsOf(fisherExact, {
        table: [
          [4, 0],
          [6, 0],
        ],
      }),
    ).toMatchObject({ p: 1, odds_ratio_conditional: null });
  });
});

/** p of any table: every table with its margins, weighed by the product over columns of c! / (x1! x2! …) in whole numbers. */
function byEveryTable(table: readonly (readonly number[])[]): number {
  const columns = table[0]!.map((_, j) => table.map((row) => row[j]!));
  const ways = (cells: readonly number[]) => {
    let [left, result] = [cells.reduce((sum, n) => sum + n, 0), 1n];
    for (const n of cells) {
      result *= choose(left, n);
      left -= n;
    }
    return result;
  };
  const seen = columns.reduce((product, cells) => product * ways(cells), 1n);
  let [all, rare] = [0n, 0n];
  const fill = (j: number, left: readonly number[], weight: bigint): void => {
    if (j === columns.length) {
      if (left.some((n) => n > 0)) return;
      all += weight;
      if (weight <= seen) rare += weight;
      return;
    }
    const place = (cells: number[], open: number): void => {
      if (cells.length === left.length) {
        if (open === 0)
          fill(
            j + 1,
            left.map((n, i) => n - cells[i]!),
            weight * ways(cells),
          );
        return;
      }
      for (let n = 0; n <= Math.min(open, left[cells.length]!); n++) place([...cells, n], open - n);
    };
    place(
      [],
      columns[j]!.reduce((sum, n) => sum + n, 0),
    );
  };
  fill(
    0,
    table.map((row) => row.reduce((sum, n) => sum + n, 0)),
    1n,
  );
  return ratio(rare, all);
}

const few = fc.integer({ min: 0, max: 4 });
const tables = fc
  .tuple(fc.integer({ min: 2, max: 3 }), fc.integer({ min: 2, max: 4 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(few, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
  )
  .filter((table) => table.flat().some((n) => n > 0));

describe("more rows or columns", () => {
  law("p is what writing down every table in whole numbers gives", [tables], (table) =>
    closeTo(fieldsOf(fisherExact, { table }).p!, byEveryTable(table), 1e-10),
  );

  law("turning the table, or its rows about, leaves p", [tables], (table) => {
    const turned = table[0]!.map((_, j) => table.map((row) => row[j]!));
    const { p } = fieldsOf(fisherExact, { table });
    closeTo(fieldsOf(fisherExact, { table: turned }).p!, p!, 1e-11);
    closeTo(fieldsOf(fisherExact, { table: table.toReversed() }).p!, p!, 1e-11);
  });

  // R 4.2.2, stats::fisher.test: nine million tables and more, still exact.
  const large = [
    [6, 1, 2, 3],
    [2, 5, 3, 1],
    [1, 2, 7, 4],
    [3, 3, 1, 6],
  ];
  it("stays exact where there are millions of tables, as R does", () =>
    closeTo(fieldsOf(fisherExact, { table: large }).p!, 0.0613619284006672, 1e-10));

  it("draws tables where asked to: near the exact p, the same for the same seed, and says so", () => {
    const drawn = fieldsOf(fisherExact, { table: large, draws: 20_000, seed: 5 });
    expect(Math.abs(drawn.p! - 0.0613619284)).toBeLessThan(4 * drawn.p_se!);
    expect(drawn).toMatchObject({ draws: 20_000, seed: 5 });
    expect(String(drawn.chosen)).toMatch(/^drawn/);
    expect(fieldsOf(fisherExact, { table: large, draws: 20_000, seed: 5 })).toEqual(drawn);
  });

  it("draws of itself where walking every table would take too long", () => {
    const table = Array.from({ length: 8 }, (_, i) => Array.from({ length: 8 }, (_, j) => ((i * 7 + j * 5) % 6) + 1));
    expect(String(fieldsOf(fisherExact, { table }).chosen)).toMatch(/^drawn/);
  });
});

it.each([
  [[[1, 2]], "out-of-domain"],
  [[[1, 2], [3]], "out-of-domain"],
  [
    [
      [1, -2],
      [3, 4],
    ],
    "out-of-domain",
  ],
  [
    [
      [1, 2.5],
      [3, 4],
    ],
    "out-of-domain",
  ],
  [
    [
      [1, Number.NaN],
      [3, 4],
    ],
    "out-of-domain",
  ],
  [
    [
      [0, 0],
      [0, 0],
    ],
    "too-few-records",
  ],
  ["words", "out-of-domain"],
])("declines %j", (table, code) => expect(refusalOf(fisherExact, { table })).toBe(code));

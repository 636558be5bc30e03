import type { Method, MethodFields, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { generatorFromSeed } from "../../numerics/index.ts";
import { alternativeFrom, alternativeInput, tailsOf } from "../counts/alternative-input.ts";
import { conditionalOddsRatio } from "../counts/conditional-odds-ratio.ts";
import { countTable, withoutEmptyMargins } from "../counts/count-table.ts";
import { drawnTableP } from "../counts/drawn-table-p.ts";
import { exactTableP } from "../counts/exact-table-p.ts";
import { fisherProbabilities } from "../counts/fisher-probabilities.ts";
import { knownNumber } from "../inputs/known-number.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { usualSeed } from "../resampling/usual-seed.ts";

type Table = readonly (readonly number[])[];

/** Tables that a 2 x 2 may have with its margins, and records that may be dealt again and again. */
const MOST_TABLES = 1_000_000;
const MOST_RECORDS = 1_000_000;
const DEALT = 100_000_000;
const DRAWS = 100_000;

function twoByTwo(table: Table, level: number, inputs: MethodInputs): Outcome<MethodFields> {
  const [[a = 0, b = 0] = [], [c = 0, d = 0] = []] = table;
  const [n1, n2] = [a + b, c + d];
  if (Math.min(n1, n2, a + c, b + d) >= MOST_TABLES)
    return declined("too-large", { name: "the smallest margin of the table", most: String(MOST_TABLES) });
  const tested = typeof inputs.null_odds_ratio === "number" ? inputs.null_odds_ratio : 1;
  const alternative = alternativeFrom(inputs);
  const p = fisherProbabilities(a, n1, c, n2, Math.log(tested));
  const odds = conditionalOddsRatio(a, n1, c, n2, ...tailsOf(alternative, level));
  return succeeded({
    n: n1 + n2,
    p: alternative === "greater" ? p.greater : alternative === "less" ? p.less : p.twoSided,
    p_two_sided: p.twoSided,
    p_greater: p.greater,
    p_less: p.less,
    odds_ratio_conditional: knownNumber(odds.estimate),
    ci95_low: knownNumber(odds.low),
    ci95_high: knownNumber(odds.high),
    odds_ratio_sample: knownNumber((a * d) / (b * c)),
    chosen: "exact: every table with these margins",
  });
}

function larger(table: Table, inputs: MethodInputs): Outcome<MethodFields> {
  const n = table.reduce((sum, row) => sum + row.reduce((inner, each) => inner + each, 0), 0);
  const kept = withoutEmptyMargins(table);
  if (kept.length < 2 || (kept[0]?.length ?? 0) < 2)
    return succeeded({ n, p: 1, chosen: "exact: the margins allow one table only" });
  const wanted = typeof inputs.draws === "number" ? inputs.draws : DRAWS;
  const exact = inputs.draws === undefined ? exactTableP(kept) : null;
  if (exact !== null) return succeeded({ n, p: exact, chosen: "exact: every table with these margins" });
  if (n > MOST_RECORDS) return declined("too-large", { name: "the sum of the table", most: String(MOST_RECORDS) });
  const draws = Math.max(1000, Math.min(wanted, Math.floor(DEALT / n)));
  const seed = typeof inputs.seed === "number" ? inputs.seed : usualSeed;
  const p = drawnTableP(kept, draws, generatorFromSeed(seed).split("tables"));
  const why =
    inputs.draws === undefined ? "too many tables have these margins to walk them all" : "draws were asked for";
  return succeeded({
    n,
    p,
    p_se: Math.sqrt((p * (1 - p)) / draws),
    draws,
    seed,
    chosen: `drawn: ${draws} tables with these margins, for ${why}`,
  });
}

/** Are the rows of a table of counts alike? Given both margins, without an approximation. */
export const fisherExact: Method = {
  id: "fisher-exact",
  name: "Fisher's exact test of a table of counts",
  answers: "words",
  needs: {},
  inputs: {
    table: { kind: "table", meaning: "counts, a list a row, as [[3, 1], [1, 3]]" },
    level: levelInput,
    alternative: alternativeInput,
    null_odds_ratio: {
      kind: "number",
      optional: true,
      above: 0,
      atMost: 1e100,
      meaning: "odds ratio that is tested in a table of two rows and two columns, 1 unless given",
    },
    draws: {
      kind: "number",
      optional: true,
      whole: true,
      atLeast: 1000,
      atMost: 10_000_000,
      meaning: "tables to draw instead of walking them all, for more than two rows or columns",
    },
    seed: { kind: "number", optional: true, meaning: `seed of the draws, ${usualSeed} unless given` },
  },
  fields: {
    n: { meaning: "records counted" },
    p: { meaning: "p of the side looked at; two-sided: all tables no more likely than the one seen" },
    p_two_sided: { meaning: "two-sided p (two rows and two columns)" },
    p_greater: { meaning: "p of as large a first cell or a larger one" },
    p_less: { meaning: "p of as small a first cell or a smaller one" },
    odds_ratio_conditional: { meaning: "odds ratio given the margins; withheld where it is infinite or undefined" },
    ci95_low: { meaning: "its exact interval at the level, lower" },
    ci95_high: { meaning: "upper; withheld where it is infinite" },
    odds_ratio_sample: { meaning: "the plain odds ratio ad/bc" },
    p_se: { meaning: "standard error of a p from drawn tables" },
    draws: { meaning: "tables drawn" },
    seed: { meaning: "seed of the draws" },
    chosen: { meaning: "how p was found, and why so" },
  },
  source: {
    citation:
      "Fisher (1935), The Design of Experiments, section 11; Mehta and Patel (1983), JASA 78, 427-434 for larger tables",
    basis: "published",
  },
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const table = countTable(inputs.table);
    if (!table.ok) return table;
    return table.value.length === 2 && table.value[0]?.length === 2
      ? twoByTwo(table.value, level.value, inputs)
      : larger(table.value, inputs);
  },
};

import type { Method, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { generatorFromSeed, hypergeometricDensity } from "../../numerics/index.ts";
import { conditionalOddsRatio } from "./conditional-odds-ratio.ts";
import { fisherP } from "./fisher-p.ts";
import { knownNumber } from "./known-number.ts";
import { levelFrom, levelInput } from "./level-input.ts";
import { tableP } from "./table-p.ts";

const DRAWS = 100_000;
const SEED = 20260314;

/** Rows of whole counts, all of one length, without rows and columns that are empty throughout. */
function countsFrom({ table }: MethodInputs): Outcome<readonly (readonly number[])[]> {
  const needed = "rows of whole counts, all of one length, at least two by two";
  const wrong = declined("out-of-domain", { name: "table", needed });
  if (!Array.isArray(table) || table.length < 2) return wrong;
  const rows: readonly unknown[] = table;
  const width = Array.isArray(rows[0]) ? rows[0].length : 0;
  const isCount = (n: unknown): n is number => typeof n === "number" && Number.isInteger(n) && n >= 0 && n <= 1e6;
  const isRow = (row: unknown): row is readonly number[] =>
    Array.isArray(row) && row.length === width && row.every(isCount);
  if (width < 2 || rows.length * width > 10_000 || !rows.every(isRow)) return wrong;
  if (!rows.some((row) => row.some((n) => n > 0))) return declined("too-few-records", { have: 0, need: 1 });
  return succeeded(rows);
}

/** Without rows and columns in which nothing was counted: they say nothing of the rest. */
function withoutEmpty(table: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const rows = table.filter((row) => row.some((n) => n > 0));
  const kept = (rows[0] ?? []).map((_, j) => rows.some((row) => (row[j] ?? 0) > 0));
  return rows.map((row) => row.filter((_, j) => kept[j]));
}

/** Both one-sided tails: that the first cell is as large, or as small, as seen. */
function tails(a: number, b: number, c: number, d: number): { readonly greater: number; readonly less: number } {
  let [greater, less] = [0, 0];
  for (let x = Math.max(0, a - d); x <= Math.min(a + b, a + c); x++) {
    const own = hypergeometricDensity(x, a + b, c + d, a + c);
    if (x >= a) greater += own;
    if (x <= a) less += own;
  }
  return { greater: Math.min(1, greater), less: Math.min(1, less) };
}

/** Whether rows and columns of a table of counts go together: Fisher's exact test; for two by two with the conditional odds ratio. */
export const fisherExact: Method = {
  id: "fisher-exact",
  name: "Fisher's exact test of a table of counts",
  answers: "words",
  needs: {},
  inputs: {
    table: { kind: "table", meaning: "counts, row by row: [[a, b], [c, d]] or larger" },
    level: levelInput,
    seed: { kind: "number", optional: true, meaning: `seed of the draws of a very large table, ${SEED} unless given` },
  },
  fields: {
    p: { meaning: "two-sided p: tables no more likely than the one seen" },
    p_greater: { meaning: "p that the first cell is as large (two by two)" },
    p_less: { meaning: "p that the first cell is as small (two by two)" },
    odds_ratio_conditional: { meaning: "odds ratio by maximum likelihood with the margins given (two by two)" },
    odds_ratio_sample: { meaning: "odds ratio ad / bc (two by two)" },
    ci95_low: { meaning: "exact interval of the conditional odds ratio, lower" },
    ci95_high: { meaning: "upper; absent where there is no bound" },
    tables: { meaning: "tables with these margins that were looked at" },
    chosen: { meaning: "which way p was found, and why" },
  },
  source: {
    citation: "Fisher (1935), The Design of Experiments; Freeman and Halton (1951), Biometrika 38, 141-149",
    basis: "published",
  },
  run: (inputs) => {
    const [counts, level] = [countsFrom(inputs), levelFrom(inputs)];
    if (!counts.ok) return counts;
    if (!level.ok) return level;
    const table = withoutEmpty(counts.value);
    const isSquare = counts.value.length === 2 && counts.value[0]?.length === 2;
    if (table.length < 2 || (table[0]?.length ?? 0) < 2)
      return succeeded({
        p: 1,
        ...(isSquare ? { p_greater: 1, p_less: 1, odds_ratio_conditional: null, odds_ratio_sample: null } : {}),
        chosen: "p is one: a row or a column is empty, so no other table has these margins",
      });
    if (isSquare) {
      const [[a = 0, b = 0] = [], [c = 0, d = 0] = []] = table;
      const ratio = conditionalOddsRatio(a, b, c, d, level.value);
      const { greater, less } = tails(a, b, c, d);
      return succeeded({
        p: fisherP(a, a + b, c, c + d),
        p_greater: greater,
        p_less: less,
        odds_ratio_conditional: knownNumber(ratio.estimate),
        odds_ratio_sample: knownNumber((a * d) / (b * c)),
        ci95_low: ratio.low,
        ci95_high: knownNumber(ratio.high),
        chosen: "exact: every table with these margins",
      });
    }
    const seed = typeof inputs.seed === "number" ? inputs.seed : SEED;
    const { p, tables, drawn } = tableP(table, DRAWS, generatorFromSeed(seed).split("tables"));
    return succeeded({
      p,
      tables,
      chosen: drawn
        ? `${DRAWS} tables drawn with seed ${seed}: there are too many to count`
        : "exact: every table with these margins",
    });
  },
};

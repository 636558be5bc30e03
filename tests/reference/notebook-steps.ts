// The steps of one whole notebook on a table of tops, each by a method of the catalogue: the same that a script in R takes on the same table.
// Source of the figures: R 4.2.2 with MASS 7.3-58.2, robustbase 0.95-0 and lme4 1.1-31 (stats/results/notebook-N.json). The tables are invented.
import { type MethodFields, refusals } from "../../src/core/base/index.ts";
import { methods } from "../../src/notebook/engine/index.ts";
import { columnsOfCsv } from "./stats-case.ts";

type Numbers = Float64Array;
export type Tops = {
  readonly rows: number;
  readonly number: (name: string) => Numbers;
  readonly words: (name: string) => readonly string[];
};

/** The table, with the columns that its formulas make. Numbers are NaN where a cell is blank. */
export function topsFromCsv(path: string): Tops {
  const read = columnsOfCsv(path);
  const numbers = new Map(
    Object.entries(read).map(([name, list]) => [
      name,
      Float64Array.from(list, (one) => (one === null ? Number.NaN : Number(one))),
    ]),
  );
  const of = (name: string): Numbers => numbers.get(name) ?? new Float64Array();
  const from = (value: (row: number) => number): Numbers => of("mass_g").map((_, row) => value(row));
  const at = (name: string) => {
    const list = of(name);
    return (row: number): number => list[row] ?? Number.NaN;
  };
  const [mass, length, width, start] = [at("mass_g"), at("length_mm"), at("width_mm"), at("thickness_start_mm")];
  const density = from((row) => mass(row) / 1000 / (length(row) * width(row) * start(row) * 1e-9));
  // The script's own constant of the free bar, 48 pi^2 / 22.37329^2.
  const bar = (48 * Math.PI ** 2) / 22.37329 ** 2 / 1e9;
  const bent = (frequency: string, size: (row: number) => number) =>
    from(
      (row) =>
        (bar * (density[row] ?? 0) * at(frequency)(row) ** 2 * (size(row) / 1000) ** 4) / (start(row) / 1000) ** 2,
    );
  const along = bent("f_long_hz", length);
  const made: Readonly<Record<string, Numbers>> = {
    density,
    E_long: along,
    E_cross: bent("f_cross_hz", width),
    logE: along.map(Math.log),
    logT: of("final_thickness_mm").map(Math.log),
  };
  return {
    rows: of("mass_g").length,
    number: (name) => made[name] ?? of(name),
    words: (name) => (read[name] ?? []).map(String),
  };
}

/** The fields that a method gives; a refusal is an error here. */
export function fieldsOf(id: string, inputs: Readonly<Record<string, unknown>>): MethodFields {
  const outcome = methods.find((one) => one.id === id)?.run(inputs);
  if (!outcome) throw new Error(`no method ${id}`);
  if (outcome.ok) return outcome.value;
  const { code, facts } = outcome.refusal;
  throw new Error(`${id}: ${(refusals[code] as (facts: unknown) => string)(facts)}`);
}

const indicators = (words: readonly string[]): Readonly<Record<string, Numbers>> =>
  Object.fromEntries(
    [...new Set(words)]
      .sort()
      .slice(1)
      .map((name, place) => [`x${place + 2}`, Float64Array.from(words, (word) => (word === name ? 1 : 0))]),
  );

/** Step -> what the catalogue gives for it, under the names of the methods' own fields. */
export const notebookSteps: Readonly<Record<string, (tops: Tops) => MethodFields>> = {
  ols: (tops) => fieldsOf("ols", { x: tops.number("logE"), y: tops.number("logT") }),
  multiple: (tops) =>
    fieldsOf("ols-multiple", {
      y: tops.number("final_thickness_mm"),
      x1: tops.number("E_long"),
      x2: tops.number("density"),
      x3: tops.number("E_cross"),
    }),
  influence: (tops) =>
    fieldsOf("influence", {
      y: tops.number("final_thickness_mm"),
      x: tops.number("E_long"),
      x2: tops.number("density"),
      x3: tops.number("E_cross"),
    }),
  robust: (tops) => fieldsOf("robust-regression", { x1: tops.number("logE"), y: tops.number("logT") }),
  theil_sen: (tops) => fieldsOf("theil-sen", { x: tops.number("logE"), y: tops.number("logT") }),
  ancova: (tops) =>
    fieldsOf("ancova", { x: tops.number("logE"), y: tops.number("logT"), group: tops.words("species") }),
  mixed: (tops) =>
    fieldsOf("mixed-model", {
      y: tops.number("logT"),
      x1: tops.number("logE"),
      ...indicators(tops.words("species")),
      group: tops.words("tree"),
    }),
  welch: (tops) => fieldsOf("anova-welch", { value: tops.number("density"), group: tops.words("species") }),
  pairs: (tops) => fieldsOf("games-howell", { value: tops.number("density"), group: tops.words("species") }),
  spearman: (tops) => fieldsOf("spearman", { x: tops.number("E_long"), y: tops.number("brightness") }),
  kendall: (tops) => fieldsOf("kendall", { x: tops.number("E_long"), y: tops.number("brightness") }),
  polr: (tops) =>
    fieldsOf("proportional-odds", {
      y: tops.number("brightness"),
      x1: tops.number("E_long").map((value) => Math.log(value / 12)),
      x2: tops.number("density").map((value) => Math.log(value / 400)),
    }),
  permutation: (tops) =>
    fieldsOf("permutation", {
      x: tops.number("logE"),
      y: tops.number("logT"),
      block: tops.words("species"),
      draws: 10_000,
    }),
  bootstrap: (tops) =>
    fieldsOf("bootstrap", { x: tops.number("logE"), y: tops.number("logT"), statistic: "slope", draws: 10_000 }),
};

// Gauges, species and tables of real wood.
import { join } from "node:path";
import type { PhysicsCase } from "../physics-case.ts";
import { columnsOfCsv } from "../stats-case.ts";
import { inUnit } from "./error-adapters.ts";
import { listedInputs, type PhysicsAdapters } from "./physics-adapter.ts";

const words = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== "");

/** The column that a text means: the one that holds most of its words and fewest others. */
function columnNamed(text: string, names: readonly string[]): string {
  const asked = words(text);
  const worth = (name: string) => {
    const own = words(name);
    const held = asked.filter((word) => own.includes(word)).length;
    return held - own.length / 1000;
  };
  return [...names].sort((a, b) => worth(b) - worth(a))[0] ?? "";
}

type Side = { readonly column: string; readonly isLog: boolean };
function sideOf(text: string, names: readonly string[]): Side {
  const log = /^\s*(?:ln|log)\b[\s(]*/i.exec(text);
  return { column: columnNamed(log ? text.slice(log[0].length) : text, names), isLog: log !== null };
}

/** `Y on X`, either side `ln` of a column; a remark after a comma may ask for the means of each tree, board, … */
function regressionInputs({ inputs, folder = "" }: PhysicsCase) {
  const columns = columnsOfCsv(join(folder, String(inputs.file?.value)));
  const [model = "", remark = ""] = String(inputs.model?.value).split(/,(.*)/s);
  const [left = "", right = ""] = model.split(/\s+on\s+/);
  const names = Object.keys(columns);
  const [y, x] = [sideOf(left, names), sideOf(right, names)];
  const group = /\bmeans?\b|\baverages?\b/i.test(remark)
    ? names.find((name) => words(remark).some((word) => word === name || word === `${name}s`))
    : undefined;
  const rows = (columns[y.column] ?? []).map((value, i) => ({
    key: group === undefined ? String(i) : String(columns[group]?.[i]),
    y: value === null ? Number.NaN : Number(value),
    x: columns[x.column]?.[i] === null ? Number.NaN : Number(columns[x.column]?.[i]),
  }));
  const groups = new Map<string, { y: number; x: number }[]>();
  for (const row of rows.filter((each) => Number.isFinite(each.x) && Number.isFinite(each.y)))
    groups.set(row.key, [...(groups.get(row.key) ?? []), row]);
  const column = (side: Side, pick: (row: { y: number; x: number }) => number) =>
    [...groups.values()].map((members) => {
      const mean = members.reduce((sum, each) => sum + pick(each), 0) / members.length;
      return side.isLog ? Math.log(mean) : mean;
    });
  return { y: column(y, (row) => row.y), x: column(x, (row) => row.x) };
}

export const recordsAdapters: PhysicsAdapters = {
  repeatability_from_duplicates: [
    {
      method: "duplicates-repeatability",
      inputs: {},
      fields: { s_repeat: "s_repeat", mean_difference: "mean_difference", repeatability_limit: "repeatability_limit" },
      made: (one) => {
        const unit = one.expected.s_repeat?.unit ?? listedInputs(one, "d")[0]?.unit ?? "1";
        return { differences: listedInputs(one, "d").map((each) => inUnit(each, unit)) };
      },
    },
  ],
  gauge_bias_and_linearity: [
    {
      method: "rig-linearity",
      inputs: {},
      fields: { bias: "average_bias", linearity_slope: "slope", intercept: "intercept" },
      made: (one) => {
        const unit = one.expected.bias?.unit ?? "mm";
        return {
          reading: listedInputs(one, "obs").map((each) => inUnit(each, unit)),
          reference: listedInputs(one, "ref").map((each) => inUnit(each, unit)),
        };
      },
    },
  ],
  regression_real_wood: [
    {
      method: "simple-line",
      inputs: {},
      fields: { n: "n", intercept: "intercept", slope: "slope", slope_se: "slope_se", r: "r" },
      made: regressionInputs,
    },
  ],
  species_ratios_to_moduli: [
    {
      method: "species-moduli",
      inputs: {
        E_L: "youngsModulus",
        ER_over_EL: "acrossRatio",
        ET_over_EL: "acrossRatio",
        GLR_over_EL: "shearRatio",
        GLT_over_EL: "shearRatio",
        nu_LR: "poisson",
        nu_LT: "poisson",
      },
      fields: {
        E_R: "acrossModulus",
        E_T: "acrossModulus",
        G_LR: "shearModulus",
        G_LT: "shearModulus",
        nu_RL: "reciprocalPoisson",
        nu_TL: "reciprocalPoisson",
        E_over_G: "modulusOverShear",
      },
    },
  ],
  correlation_small_sample: [
    {
      method: "correlation-evidence",
      inputs: { n: "n", r: "r" },
      fields: { p: "p", r_critical: "critical_r", t: "t" },
    },
  ],
};

// Gauge repeatability and reproducibility: every part measured by every operator equally often.
import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { compensatedSum, fUpperTail, mean } from "../../numerics/index.ts";
import { inputLabels, inputNumbers } from "./input-numbers.ts";

type Table = {
  readonly parts: readonly string[];
  readonly operators: readonly string[];
  readonly cells: readonly (readonly number[])[];
  readonly repeats: number;
};

const inOrder = (labels: readonly (string | null)[]) =>
  [...new Set(labels.flatMap((label) => (label === null ? [] : [label])))].sort((a, b) => (a < b ? -1 : 1));

/** The crossed table, parts by operators; null when a cell has another number of values than the rest. */
function crossed(
  part: readonly (string | null)[],
  operator: readonly (string | null)[],
  value: readonly number[],
): Table | null {
  const [parts, operators] = [inOrder(part), inOrder(operator)];
  const byCell = new Map<string, number[]>();
  for (const [i, number] of value.entries()) {
    if (part[i] === null || operator[i] === null || !Number.isFinite(number)) continue;
    const key = JSON.stringify([part[i], operator[i]]);
    byCell.set(key, [...(byCell.get(key) ?? []), number]);
  }
  const cells = parts.flatMap((p) => operators.map((o) => byCell.get(JSON.stringify([p, o])) ?? []));
  const repeats = cells[0]?.length ?? 0;
  return repeats > 1 && cells.every((cell) => cell.length === repeats) ? { parts, operators, cells, repeats } : null;
}

const squaresAbout = (values: readonly number[], middle: number) =>
  compensatedSum(values.map((value) => (value - middle) ** 2));
const POOL_ABOVE = 0.25;
const known = (value: number): number | null => (Number.isFinite(value) ? value : null);

function variances(table: Table) {
  const [p, o, r] = [table.parts.length, table.operators.length, table.repeats];
  const cellMeans = table.cells.map((cell) => mean(cell));
  const middle = mean(table.cells.flat());
  const partMeans = table.parts.map((_, i) => mean(table.operators.map((_, j) => cellMeans[i * o + j] as number)));
  const operatorMeans = table.operators.map((_, j) => mean(table.parts.map((_, i) => cellMeans[i * o + j] as number)));
  const apart = cellMeans.map(
    (value, at) => value - (partMeans[Math.floor(at / o)] as number) - (operatorMeans[at % o] as number) + middle,
  );
  const ss = [
    o * r * squaresAbout(partMeans, middle),
    p * r * squaresAbout(operatorMeans, middle),
    r * squaresAbout(apart, 0),
    compensatedSum(table.cells.map((cell) => squaresAbout(cell, mean(cell)))),
  ] as const;
  const df = [p - 1, o - 1, (p - 1) * (o - 1), p * o * (r - 1)] as const;
  return { ss, df, ms: ss.map((sum, i) => sum / (df[i] as number)) as [number, number, number, number] };
}

/** Components from mean squares; a negative one is zero. */
function components(ms: readonly [number, number, number, number], table: Table, pooled: number | null) {
  const [p, o, r] = [table.parts.length, table.operators.length, table.repeats];
  const error = pooled ?? ms[3];
  const against = pooled ?? ms[2];
  return {
    repeatability: error,
    operator: Math.max(0, (ms[1] - against) / (p * r)),
    interaction: pooled === null ? Math.max(0, (ms[2] - ms[3]) / r) : 0,
    part: Math.max(0, (ms[0] - against) / (o * r)),
  };
}

/**
 * Crossed, balanced, both random: mean squares of part, operator, part by operator, repeats; the interaction is pooled into the repeats when its
 * p is above 0.25; components not below zero. Percentages are of the total standard deviation; ndc = whole part of sqrt(2) part / grr.
 * part, operator: labels; value: quantities, every cell equally often and at least twice.
 * Source: Montgomery, Introduction to Statistical Quality Control, 6th ed. (2009), section 8.7.2 (analysis of variance of a gauge study).
 */
export const gaugeRr: Method = {
  id: "gauge-rr",
  name: "Gauge repeatability and reproducibility",
  answers: "rig",
  needs: { rows: 8, groups: 2 },
  inputs: {
    part: { kind: "labels", meaning: "what was measured" },
    operator: { kind: "labels", meaning: "who measured" },
    value: { kind: "quantities", meaning: "what was read" },
    tolerance_width: { kind: "number", optional: true, meaning: "width of what is allowed, in the unit of value" },
    pool_above: {
      kind: "number",
      optional: true,
      atLeast: 0,
      atMost: 1,
      meaning: "p above which the interaction is pooled into the repeats, 0.25; 1: never",
    },
  },
  fields: {
    df: { meaning: "degrees of freedom of part, operator, part by operator, repeats" },
    ss: { meaning: "sums of squares in that order" },
    ms: { meaning: "mean squares in that order" },
    F_interaction: { meaning: "mean square of part by operator over that of the repeats" },
    p_interaction: { meaning: "upper tail probability of that F" },
    F_part_over_interaction: { meaning: "mean square of part over part by operator" },
    F_operator_over_interaction: { meaning: "mean square of operator over part by operator" },
    pooled: { meaning: "whether the interaction was pooled into the repeats" },
    ms_repeatability: { meaning: "mean square used for the repeats" },
    sd_repeatability: { meaning: "standard deviation of repeats" },
    sd_reproducibility: { meaning: "standard deviation between operators, interaction included" },
    sd_operator: { meaning: "standard deviation of operators" },
    sd_interaction: { meaning: "standard deviation of part by operator" },
    sd_grr: { meaning: "standard deviation of repeatability and reproducibility together" },
    sd_part: { meaning: "standard deviation of parts" },
    sd_total: { meaning: "total standard deviation" },
    percent_grr: { meaning: "sd_grr in percent of sd_total" },
    percent_repeatability: { meaning: "sd_repeatability in percent of sd_total" },
    percent_reproducibility: { meaning: "sd_reproducibility in percent of sd_total" },
    percent_part: { meaning: "sd_part in percent of sd_total" },
    percent_contribution_grr: { meaning: "variance of grr in percent of the total variance" },
    ndc: { meaning: "number of distinct categories, whole part" },
    ndc_raw: { meaning: "number of distinct categories before rounding down" },
    sd_grr_unpooled: { meaning: "sd_grr had the interaction not been pooled" },
    percent_tolerance: { meaning: "six times sd_grr in percent of the tolerance's width; absent without one" },
  },
  source: {
    citation: "Montgomery, Introduction to Statistical Quality Control, 6th ed. (2009), section 8.7.2",
    basis: "memory",
  },
  run: (inputs) => {
    const table = crossed(inputLabels(inputs.part), inputLabels(inputs.operator), inputNumbers(inputs.value));
    if (table === null)
      return declined("out-of-domain", {
        name: "the table",
        needed: "every part measured by every operator equally often, at least twice",
      });
    if (table.parts.length < 2) return declined("one-group", { column: "part", group: table.parts[0] ?? "" });
    if (table.operators.length < 2)
      return declined("one-group", { column: "operator", group: table.operators[0] ?? "" });
    const { ss, df, ms } = variances(table);
    if (!(ms[3] > 0)) return declined("no-spread", { column: "value" });
    const f = ms[2] / ms[3];
    const p = fUpperTail(f, df[2], df[3]);
    const pooled = p > (typeof inputs.pool_above === "number" ? inputs.pool_above : POOL_ABOVE);
    const error = pooled ? (ss[2] + ss[3]) / (df[2] + df[3]) : ms[3];
    const parts = components(ms, table, pooled ? error : null);
    const apart = components(ms, table, null);
    const reproducibility = parts.operator + parts.interaction;
    const grr = parts.repeatability + reproducibility;
    const total = grr + parts.part;
    const percent = (variance: number) => 100 * Math.sqrt(variance / total);
    const categories = Math.SQRT2 * Math.sqrt(parts.part / grr);
    const width = inputs.tolerance_width;
    return succeeded({
      df,
      ss,
      ms,
      F_interaction: f,
      p_interaction: p,
      F_part_over_interaction: known(ms[0] / ms[2]),
      F_operator_over_interaction: known(ms[1] / ms[2]),
      pooled,
      ms_repeatability: error,
      sd_repeatability: Math.sqrt(parts.repeatability),
      sd_reproducibility: Math.sqrt(reproducibility),
      sd_operator: Math.sqrt(parts.operator),
      sd_interaction: Math.sqrt(parts.interaction),
      sd_grr: Math.sqrt(grr),
      sd_part: Math.sqrt(parts.part),
      sd_total: Math.sqrt(total),
      percent_grr: percent(grr),
      percent_repeatability: percent(parts.repeatability),
      percent_reproducibility: percent(reproducibility),
      percent_part: percent(parts.part),
      percent_contribution_grr: (100 * grr) / total,
      ndc: Math.floor(categories),
      ndc_raw: categories,
      sd_grr_unpooled: Math.sqrt(apart.repeatability + apart.operator + apart.interaction),
      percent_tolerance: typeof width === "number" && width > 0 ? (600 * Math.sqrt(grr)) / width : null,
    });
  },
};

// Repeatability and reproducibility: one thing measured by several people, each several times.
import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { compensatedSum, mean, standardDeviation } from "../../numerics/index.ts";
import { groupsInOrder } from "../../questions/index.ts";
import { inputLabels, inputNumbers } from "./input-numbers.ts";

/**
 * One-way layout with unequal numbers: s_r² pools within labs; s_L² = (MS between − s_r²) / n_bar, not below zero; s_R² = s_r² + s_L².
 * n_bar = (N − sum n² / N) / (labs − 1); r and R are the limit factor times s_r and s_R; Mandel's h and k; Cochran's C.
 * lab: label of each value, at least two; value: quantities, at least one lab with two. Source: ISO 5725-2:1994, 7.4 and 7.3.
 */
export const iso5725: Method = {
  id: "iso5725",
  name: "Repeatability and reproducibility",
  answers: "rig",
  needs: { rows: 4, groups: 2 },
  inputs: {
    lab: { kind: "labels", meaning: "who measured" },
    value: { kind: "quantities", meaning: "what was read" },
    limit_factor: { kind: "number", optional: true, meaning: "factor of the limits, 2.8" },
  },
  fields: {
    mean: { meaning: "mean of all values" },
    s_r: { meaning: "repeatability standard deviation" },
    s_L: { meaning: "standard deviation between labs" },
    s_R: { meaning: "reproducibility standard deviation" },
    r: { meaning: "repeatability limit" },
    R: { meaning: "reproducibility limit" },
    n_bar: { meaning: "effective number of values a lab" },
    lab_means: { meaning: "mean of each lab, in order of name" },
    cochran_C: { meaning: "largest variance of a lab over the sum of them" },
    h: { meaning: "Mandel's h of each lab" },
    k: { meaning: "Mandel's k of each lab; null for a lab with one value" },
  },
  source: { citation: "ISO 5725-2:1994, 7.3 and 7.4", basis: "standard" },
  run: (inputs) => {
    const [labels, values] = [inputLabels(inputs.lab), inputNumbers(inputs.value)];
    const byLab = new Map<string, number[]>();
    for (const [i, label] of labels.entries()) {
      const value = values[i];
      if (label === null || value === undefined || !Number.isFinite(value)) continue;
      byLab.set(label, [...(byLab.get(label) ?? []), value]);
    }
    const labs = groupsInOrder([...byLab.keys()]).map((name) => byLab.get(name) ?? []);
    const count = labs.reduce((sum, own) => sum + own.length, 0);
    if (labs.length < 2) return declined("one-group", { column: "lab", group: [...byLab.keys()][0] ?? "" });
    if (count <= labs.length) return declined("too-few-records", { have: count, need: labs.length + 1 });
    const within =
      compensatedSum(labs.flatMap((own) => own.map((value) => (value - mean(own)) ** 2))) / (count - labs.length);
    if (!(within > 0)) return declined("no-spread", { column: "value" });
    const middle = mean(labs.flat());
    const between = compensatedSum(labs.map((own) => own.length * (mean(own) - middle) ** 2)) / (labs.length - 1);
    const nBar = (count - labs.reduce((sum, own) => sum + own.length ** 2, 0) / count) / (labs.length - 1);
    const lab = Math.max(0, (between - within) / nBar);
    const factor = typeof inputs.limit_factor === "number" ? inputs.limit_factor : 2.8;
    const means = labs.map((own) => mean(own));
    const spread = standardDeviation(means);
    const variances = labs.map((own) => (own.length > 1 ? standardDeviation(own) ** 2 : null));
    const told = variances.filter((variance) => variance !== null);
    const middling = Math.sqrt(mean(told));
    return succeeded({
      mean: middle,
      s_r: Math.sqrt(within),
      s_L: Math.sqrt(lab),
      s_R: Math.sqrt(within + lab),
      r: factor * Math.sqrt(within),
      R: factor * Math.sqrt(within + lab),
      n_bar: nBar,
      lab_means: means,
      cochran_C: Math.max(...told) / compensatedSum(told),
      h: spread > 0 ? means.map((value) => (value - mean(means)) / spread) : null,
      k: variances.map((variance) => (variance === null ? null : Math.sqrt(variance) / middling)),
    });
  },
};

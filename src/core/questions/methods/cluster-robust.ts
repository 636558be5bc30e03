import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { tQuantile, tTwoSided } from "../../numerics/index.ts";
import { clusterErrors } from "./cluster-errors.ts";
import { completeInputs, plain } from "./complete-inputs.ts";
import { groupColumns } from "./group-columns.ts";
import { linearFit, ones } from "./linear-fit.ts";
import { sources } from "./sources.ts";

const needs = { rows: 4, groups: 3, distinct: { x: 2 } };

/** Least squares whose interval counts the pieces of one tree, billet or batch as one piece of evidence (CR2). */
export const clusterRobust: Method = {
  id: "cluster-robust",
  name: "Least squares, pieces of one tree counted together (CR2)",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
    cluster: { kind: "labels", meaning: "what pieces share" },
  },
  fields: {
    clusters: { meaning: "number of clusters" },
    coef: { meaning: "constant and slope" },
    se_cr0: { meaning: "standard errors, CR0" },
    se_cr1: { meaning: "CR1" },
    se_cr2: { meaning: "CR2" },
    df_cr2: { meaning: "Satterthwaite degrees of freedom" },
    p_cr2: { meaning: "two-sided p" },
    ci95_low_cr2: { meaning: "95 % intervals, lower" },
    ci95_high_cr2: { meaning: "upper" },
  },
  source: sources.bellMcCaffrey,
  run: (inputs) => {
    const complete = completeInputs(inputs, ["x", "y"], ["cluster"], needs);
    if (!complete.ok) return complete;
    const { x, y } = complete.value.arrays as { x: Float64Array; y: Float64Array };
    const { names, codes } = groupColumns(complete.value.labels.cluster ?? []);
    const fit = linearFit([ones(y.length), x], y);
    const errors = clusterErrors(fit, codes, names.length);
    const half = errors.cr2.map((se, j) => se * tQuantile(0.975, errors.degreesOfFreedom[j] as number));
    return succeeded({
      clusters: names.length,
      coef: plain(fit.coefficients),
      se_cr0: plain(errors.cr0),
      se_cr1: plain(errors.cr1),
      se_cr2: plain(errors.cr2),
      df_cr2: plain(errors.degreesOfFreedom),
      p_cr2: plain(
        fit.coefficients.map((b, j) => tTwoSided(b / (errors.cr2[j] as number), errors.degreesOfFreedom[j] as number)),
      ),
      ci95_low_cr2: plain(fit.coefficients.map((b, j) => b - (half[j] as number))),
      ci95_high_cr2: plain(fit.coefficients.map((b, j) => b + (half[j] as number))),
    });
  },
};

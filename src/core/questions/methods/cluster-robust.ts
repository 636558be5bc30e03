import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { sumOfSquares, tQuantile, tTwoSided } from "../../numerics/index.ts";
import { clusterErrors } from "../fits/cluster-errors.ts";
import { plain } from "../inputs/complete-inputs.ts";
import { explainedBy, explainedByInputs, fitOf } from "../inputs/explained-by.ts";
import { groupColumns } from "../inputs/group-columns.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { sources } from "./sources.ts";

/** Least squares whose interval counts the pieces of one tree, billet or batch as one piece of evidence (CR2). */
export const clusterRobust: Method = {
  id: "cluster-robust",
  name: "Least squares, pieces of one tree counted together (CR2)",
  answers: "relation",
  needs: { rows: 4, groups: 3 },
  inputs: {
    ...explainedByInputs,
    cluster: { kind: "labels", meaning: "what pieces share" },
    level: levelInput,
  },
  fields: {
    clusters: { meaning: "number of clusters" },
    coef: { meaning: "constant and slopes" },
    se_cr0: { meaning: "standard errors, CR0" },
    se_cr1: { meaning: "CR1" },
    se_cr2: { meaning: "CR2" },
    df_cr2: { meaning: "Satterthwaite degrees of freedom" },
    p_cr2: { meaning: "two-sided p" },
    ci95_low_cr2: { meaning: "intervals, lower" },
    ci95_high_cr2: { meaning: "upper" },
  },
  source: sources.bellMcCaffrey,
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const data = explainedBy(inputs, ["cluster"], 2);
    if (!data.ok) return data;
    const { names, codes } = groupColumns(data.value.labels.cluster ?? []);
    if (names.length < 3) return declined("too-few-groups", { column: "clusters", have: names.length, need: 3 });
    const made = fitOf(data.value, level.value);
    if (!made.ok) return made;
    const fit = made.value;
    if (fit.residualSumOfSquares <= 1e-20 * sumOfSquares(data.value.y)) return declined("perfect-fit", { column: "y" });
    const errors = clusterErrors(fit, codes, names.length);
    const half = errors.cr2.map((se, j) => se * tQuantile((1 + level.value) / 2, errors.degreesOfFreedom[j] as number));
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

import { declined, type Method, succeeded } from "../../base/index.ts";
import { decimalsFromFirst } from "../../numerics/index.ts";
import { groupMoments } from "../groups/group-moments.ts";
import { oneWayAnova } from "../groups/welch-anova.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { groupColumns } from "../inputs/group-columns.ts";

const needs = { rows: 3, groups: 2 };

/**
 * The table of a one-way analysis of variance with one common spread. A record is subtracted before any group is averaged, as the decimals
 * that were written: means near 1e12 are themselves rounded to 1e-4, and so are readings. value: finite; group: labels, at least two groups and one group with two records.
 * Source: Fisher (1925), Statistical Methods for Research Workers; shift by a record: Chan, Golub and LeVeque (1983).
 */
export const anovaNist: Method = {
  id: "anova-nist",
  name: "One-way analysis of variance with one common spread",
  answers: "comparison",
  needs,
  inputs: {
    value: { kind: "quantities", meaning: "measured quantity" },
    group: { kind: "labels", meaning: "group of each record" },
  },
  fields: {
    df_between: { meaning: "groups less one" },
    df_within: { meaning: "records less groups" },
    ss_between: { meaning: "squares between groups" },
    ss_within: { meaning: "squares within groups" },
    ms_between: { meaning: "ss_between over df_between" },
    ms_within: { meaning: "ss_within over df_within" },
    F: { meaning: "ms_between over ms_within" },
    p: { meaning: "upper tail probability of F" },
    r2: { meaning: "share of squares between" },
    sigma: { meaning: "standard deviation within groups" },
  },
  source: {
    citation: "Fisher (1925), Statistical Methods for Research Workers; Chan, Golub and LeVeque (1983)",
    basis: "published",
  },
  run: (inputs) => {
    const complete = completeInputs(inputs, ["value"], ["group"], needs);
    if (!complete.ok) return complete;
    const y = complete.value.arrays.value as Float64Array;
    const { names, codes } = groupColumns(complete.value.labels.group ?? []);
    if (y.length <= names.length) return declined("too-few-records", { have: y.length, need: names.length + 1 });
    const { F, p, df1, df2, between, within } = oneWayAnova(groupMoments(decimalsFromFirst(y), codes, names.length));
    if (!Number.isFinite(between + within)) return declined("too-large", { name: "value", most: "1e150" });
    if (!(within > 0)) return declined("perfect-fit", { column: "value" });
    return succeeded({
      df_between: df1,
      df_within: df2,
      ss_between: between,
      ss_within: within,
      ms_between: between / df1,
      ms_within: within / df2,
      F,
      p,
      r2: between / (between + within),
      sigma: Math.sqrt(within / df2),
    });
  },
};

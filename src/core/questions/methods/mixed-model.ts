import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { tTwoSided } from "../../numerics/index.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs, plain } from "../inputs/complete-inputs.ts";
import { groupsInOrder, orderInput } from "../inputs/group-columns.ts";
import { atRatio } from "../mixed/at-ratio.ts";
import { coefficientsAt } from "../mixed/coefficients-at.ts";
import { groupedSums } from "../mixed/grouped-sums.ts";
import { restrictedDeviance } from "../mixed/restricted-deviance.ts";
import { satterthwaite } from "../mixed/satterthwaite.ts";
import { varianceComponents } from "../mixed/variance-components.ts";

const NAMES = ["x1", "x2", "x3", "x4", "x5", "x6", "x7", "x8"] as const;

/** A line through records that come in groups: each group (tree, batch) has its own level, drawn from a common normal law (REML). */
export const mixedModel: Method = {
  id: "mixed-model",
  name: "Least squares where each group has its own level (random intercept, REML)",
  answers: "relation",
  needs: { rows: 4, groups: 2 },
  inputs: {
    y: { kind: "quantities", meaning: "explained quantity" },
    x1: {
      kind: "quantities",
      optional: true,
      meaning: "explaining quantity 1, beside as many more (x2 to x8) as there are; none for the mean alone",
    },
    ...Object.fromEntries(
      NAMES.slice(1).map((name, at) => [
        name,
        {
          kind: "quantities",
          optional: true,
          meaning: `explaining quantity ${at + 2}; its slope is entry ${at + 3} of coef`,
        } as const,
      ]),
    ),
    group: { kind: "labels", meaning: "what pieces share: tree, batch, board" },
    group_order: {
      kind: "labels",
      optional: true,
      meaning: "groups in the order of the answer; those not named follow in alphabetical order",
    },
  },
  fields: {
    coef: { meaning: "constant and slopes" },
    se: { meaning: "their standard errors" },
    df_satterthwaite: {
      meaning: "degrees of freedom by Satterthwaite; null where no variance between groups is found",
    },
    p_satterthwaite: { meaning: "two-sided p with them" },
    sd_between: { meaning: "standard deviation between groups" },
    sd_within: { meaning: "standard deviation within groups" },
    icc: { meaning: "share of the variance that lies between groups" },
    loglik_reml: { meaning: "restricted log likelihood" },
    groups: { meaning: "number of groups" },
    group_names: { meaning: "groups in the order of group_effects" },
    group_effects: { meaning: "predicted level of each group less the common one" },
    singular: { meaning: "whether the variance between groups is estimated as zero" },
    set_aside: { meaning: "records left out because a value is missing" },
  },
  source: {
    citation:
      "Laird and Ware (1982), Biometrics 38, 963-974; Bates et al. (2015), Journal of Statistical Software 67(1); Satterthwaite (1946), Biometrics Bulletin 2, 110-114",
    basis: "published",
  },
  run: (inputs) => {
    const given = NAMES.filter((name) => inputs[name] !== undefined);
    const complete = completeInputs(inputs, ["y", ...given], ["group"], { rows: given.length + 3, groups: 2 });
    if (!complete.ok) return complete;
    const y = complete.value.arrays.y as Float64Array;
    const x = given.map((name) => complete.value.arrays[name] as Float64Array);
    const labels = complete.value.labels.group ?? [];
    const names = groupsInOrder(labels, orderInput(inputs.group_order));
    const place = new Map(names.map((name, at) => [name, at]));
    const codes = Int32Array.from(labels, (label) => place.get(label) ?? -1);
    if (names.length === y.length)
      return declined("out-of-domain", {
        name: "group",
        needed: "at least one group with two pieces, or group and piece cannot be told apart",
      });
    const fit = linearFit([ones(y.length), ...x], y);
    if (fit.rank <= x.length)
      return declined("collinear", {
        column: fit.dependent.map((at) => given[at - 1] ?? "the constant").join(" and "),
      });
    const data = groupedSums([...x, y], codes, names.length);
    const found = varianceComponents(data);
    if (!found.converged) return declined("not-converged", { name: "the variance between groups" });
    if (found.unbounded || !(found.within > 1e-20 * (data.scales.at(-1) ?? 1) ** 2) || !Number.isFinite(found.within))
      return declined("perfect-fit", { column: "y" });
    const ratio = found.between / found.within;
    const { coef, spread } = coefficientsAt(data, atRatio(data, ratio));
    const se = spread.map((v) => Math.sqrt(v * found.within));
    const isSingular = found.between === 0;
    const df = isSingular ? coef.map(() => Number.NaN) : satterthwaite(data, found);
    const rests = new Float64Array(names.length);
    codes.forEach((code, i) => {
      const fitted = x.reduce((sum, column, j) => sum + (coef[j + 1] ?? 0) * (column[i] as number), coef[0] ?? 0);
      rests[code] = (rests[code] as number) + (y[i] as number) - fitted;
    });
    const effects = rests.map((sum, g) => (sum * ratio) / (1 + (data.sizes[g] as number) * ratio));
    return succeeded({
      coef: plain(coef),
      se: plain(se),
      df_satterthwaite: plain(df),
      p_satterthwaite: plain(coef.map((b, j) => (isSingular ? Number.NaN : tTwoSided(b / (se[j] ?? 1), df[j] ?? 1)))),
      sd_between: Math.sqrt(found.between),
      sd_within: Math.sqrt(found.within),
      icc: found.between / (found.between + found.within),
      loglik_reml: -restrictedDeviance(data, found.between, found.within) / 2,
      groups: names.length,
      group_names: names,
      group_effects: plain(effects),
      singular: isSingular,
      set_aside: complete.value.setAside,
    });
  },
  cautions: (_, { singular }) =>
    singular === true ? [{ code: "no-spread-between-groups", facts: { group: "group" } }] : [],
};

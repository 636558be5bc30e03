import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { normalQuantile, normalUpperTail, tTwoSided } from "../../numerics/index.ts";
import { correlation } from "../fits/correlation.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3, distinct: { x: 2, y: 2 } };

/** Correlation of two quantities with Fisher's interval; t with n - 2 degrees of freedom; a test against rho0. */
export const pearson: Method = {
  id: "pearson",
  name: "Correlation",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "one quantity" },
    y: { kind: "quantities", meaning: "the other" },
    level: levelInput,
    rho0: { kind: "number", optional: true, meaning: "correlation to test against, 0 if not given" },
  },
  fields: {
    r: { meaning: "correlation" },
    t: { meaning: "its t" },
    df: { meaning: "degrees of freedom" },
    p: { meaning: "two-sided p" },
    ci95_low: { meaning: "interval, lower" },
    ci95_high: { meaning: "upper" },
    z_against_rho0: { meaning: "z against rho0" },
    p_against_rho0: { meaning: "its two-sided p" },
  },
  source: sources.fisher,
  run: (inputs) => {
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    const [r, n] = [correlation(x, y), x.length];
    const rho0 = typeof inputs.rho0 === "number" ? inputs.rho0 : 0;
    if (!(Math.abs(rho0) < 1))
      return declined("out-of-domain", { name: "rho0", needed: "a value above -1 and below 1" });
    if (!(Math.abs(r) < 1)) return declined("perfect-fit", { column: "y" });
    const t = r * Math.sqrt((n - 2) / (1 - r * r));
    const error = 1 / Math.sqrt(n - 3);
    const half = normalQuantile((1 + level) / 2) * error;
    const z = (Math.atanh(r) - Math.atanh(rho0)) / error;
    const exists = n > 3;
    return succeeded({
      r,
      t,
      df: n - 2,
      p: tTwoSided(t, n - 2),
      ci95_low: exists ? Math.tanh(Math.atanh(r) - half) : null,
      ci95_high: exists ? Math.tanh(Math.atanh(r) + half) : null,
      z_against_rho0: exists ? z : null,
      p_against_rho0: exists ? 2 * normalUpperTail(Math.abs(z)) : null,
    });
  },
};

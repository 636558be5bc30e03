import { declined, type Method, succeeded } from "../../base/index.ts";
import { tQuantile, tTwoSided } from "../../numerics/index.ts";

/** Three significant places, for a sentence. */
const shown = (value: number): string => value.toFixed(3);

/** What a correlation of so many records is worth: its p, and how large it would have to be. */
export const correlationEvidence: Method = {
  id: "correlation-evidence",
  name: "What a correlation of few records is worth",
  answers: "relation",
  needs: { rows: 3 },
  inputs: {
    n: { kind: "number", meaning: "records" },
    r: { kind: "number", meaning: "correlation found, -1 to 1" },
    alpha: { kind: "number", optional: true, atLeast: 1e-300, meaning: "two-sided level, 0.05" },
  },
  fields: {
    t: { meaning: "its t" },
    df: { meaning: "degrees of freedom, n - 2" },
    p: { meaning: "two-sided p of no correlation" },
    critical_r: { meaning: "size that r must exceed at that level" },
    alpha: { meaning: "two-sided level" },
  },
  source: {
    citation: "R. A. Fisher (1915), Biometrika 10, 507-521; t with n - 2 degrees of freedom",
    basis: "published",
  },
  run: ({ n, r, alpha = 0.05 }) => {
    if (typeof n !== "number" || !Number.isInteger(n))
      return declined("out-of-domain", { name: "n", needed: "a whole number" });
    if (n < 3) return declined("too-few-records", { have: Math.max(0, n), need: 3 });
    if (typeof r !== "number" || !(Math.abs(r) <= 1))
      return declined("out-of-domain", { name: "r", needed: "a number from -1 to 1" });
    if (typeof alpha !== "number" || !(alpha > 0 && alpha < 1))
      return declined("out-of-domain", { name: "alpha", needed: "a number above 0 and below 1" });
    const df = n - 2;
    const limit = -tQuantile(alpha / 2, df);
    const t = Math.abs(r) === 1 ? null : r * Math.sqrt(df / (1 - r * r));
    return succeeded({
      t,
      df,
      p: t === null ? 0 : tTwoSided(t, df),
      critical_r: limit / Math.hypot(limit, Math.sqrt(df)),
      alpha,
    });
  },
  cautions: ({ n, r }, { critical_r: critical, p, alpha }) =>
    typeof n === "number" && typeof r === "number" && typeof critical === "number" && Number(p) >= Number(alpha)
      ? [{ code: "small-sample-correlation", facts: { have: n, found: shown(r), needed: shown(critical) } }]
      : [],
};

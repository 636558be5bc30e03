import type { InputSpec, Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { midranks, normalQuantile, tTwoSided } from "../../numerics/index.ts";
import { correlation } from "../fits/correlation.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";

const GIVEN = ["z1", "z2", "z3", "z4", "z5", "z6"];

/** Correlation of two quantities once what others explain of both is taken out. */
export const partialCorrelation: Method = {
  id: "partial-correlation",
  name: "Partial correlation",
  answers: "relation",
  needs: { rows: 4 },
  inputs: {
    x: { kind: "quantities", meaning: "one quantity" },
    y: { kind: "quantities", meaning: "the other" },
    ...Object.fromEntries(
      GIVEN.map((name, at) => [
        name,
        { kind: "quantities", ...(at > 0 ? { optional: true } : {}), meaning: "a quantity held as given" } as InputSpec,
      ]),
    ),
    method: {
      kind: "choice",
      choices: ["pearson", "spearman"],
      optional: true,
      meaning: "of the quantities, or of their ranks; pearson unless given",
    },
    level: levelInput,
  },
  fields: {
    r: { meaning: "partial correlation" },
    r_zero_order: { meaning: "correlation with nothing held" },
    t: { meaning: "its t" },
    df: { meaning: "degrees of freedom, n - 2 - quantities held" },
    p: { meaning: "two-sided p" },
    ci95_low: { meaning: "interval by Fisher's z, lower" },
    ci95_high: { meaning: "upper" },
    set_aside: { meaning: "records with a missing value" },
  },
  source: {
    citation: "Fisher (1924), Metron 3, 329-332; Anderson (2003), Multivariate Statistical Analysis, section 4.3",
    basis: "published",
  },
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const held = GIVEN.filter((name) => inputs[name] !== undefined);
    const all = ["x", "y", ...held];
    if (held.length === 0) return declined("input-missing", { name: "z1", meaning: "a quantity held as given" });
    const complete = completeInputs(inputs, all, [], {
      rows: held.length + 3,
      distinct: Object.fromEntries(all.map((name) => [name, 2])),
    });
    if (!complete.ok) return complete;
    const read = (name: string) => complete.value.arrays[name] ?? new Float64Array();
    const columnOf = (name: string) => (inputs.method === "spearman" ? midranks(read(name)) : read(name));
    const [x, y] = [columnOf("x"), columnOf("y")];
    const design = [ones(x.length), ...held.map(columnOf)];
    const [fitX, fitY] = [linearFit(design, x), linearFit(design, y)];
    if (fitX.rank < design.length)
      return declined("collinear", {
        column: fitX.dependent.map((at) => held[at - 1] ?? "the constant").join(" and "),
      });
    const left = (fit: typeof fitX, whole: Float64Array) => {
      const spread = whole.reduce((most, value) => Math.max(most, Math.abs(value - (whole[0] as number))), 0);
      return Math.sqrt(fit.residualSumOfSquares) > 1e-10 * spread;
    };
    if (!left(fitX, x) || !left(fitY, y)) return declined("perfect-fit", { column: left(fitX, x) ? "y" : "x" });
    const r = correlation(fitX.residuals, fitY.residuals);
    if (!(Math.abs(r) < 1)) return declined("perfect-fit", { column: "y" });
    const [n, k] = [x.length, held.length];
    const df = n - 2 - k;
    const t = r * Math.sqrt(df / (1 - r * r));
    const half = n - k > 3 ? normalQuantile((1 + level.value) / 2) / Math.sqrt(n - k - 3) : Number.NaN;
    const end = (side: number) => (Number.isFinite(half) ? Math.tanh(Math.atanh(r) + side * half) : null);
    return succeeded({
      r,
      r_zero_order: correlation(x, y),
      t,
      df,
      p: tTwoSided(t, df),
      ci95_low: end(-1),
      ci95_high: end(1),
      set_aside: complete.value.setAside,
    });
  },
};

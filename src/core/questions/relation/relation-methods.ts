// The methods that answer `Y against X` by themselves when a question names them: how each is given the sample, and where its interval stands.
import type { Method, MethodFields, MethodInputs } from "../../base/index.ts";
import { tQuantile } from "../../numerics/index.ts";
import { bootstrap } from "../methods/bootstrap.ts";
import { deming } from "../methods/deming.ts";
import { kendall } from "../methods/kendall.ts";
import { pearson } from "../methods/pearson.ts";
import { reducedMajorAxis } from "../methods/reduced-major-axis.ts";
import { robustRegression } from "../methods/robust-regression.ts";
import { spearman } from "../methods/spearman.ts";
import { theilSen } from "../methods/theil-sen.ts";
import { york } from "../methods/york.ts";

type Interval = { readonly value: unknown; readonly low: unknown; readonly high: unknown; readonly error?: unknown };

export type RelationMethod = {
  readonly method: Method;
  readonly is: "slope" | "correlation";
  /** It weighs records by the uncertainty of both columns, and cannot do without. */
  readonly usesErrors?: true;
  /** What it is asked besides x and y. */
  readonly asks?: MethodInputs;
  readonly read: (fields: MethodFields, records: number) => Interval;
};

/**
 * The slope with t times its standard error on n - 2 degrees of freedom. An error that comes from stated uncertainties alone grows with what the
 * records scatter beyond them (Birge's ratio, never below 1).
 */
function slopeGiveOrTake(fields: MethodFields, records: number): Interval {
  const beyond = Math.sqrt(Math.max(1, Number(fields.reduced_chi2 ?? 1)));
  const [value, error] = [Number(fields.slope), Number(fields.se_slope) * beyond];
  const half = tQuantile(0.975, records - 2) * error;
  return { value, low: value - half, high: value + half, error };
}

/** The MM slope with t times its standard error, and without an interval where the records give no error. */
function mmSlope({ mm_coef, mm_se }: MethodFields, records: number): Interval {
  const [value, error] = [mm_coef, mm_se].map((list) => (list as readonly (number | null)[])[1] ?? null);
  if (typeof value !== "number" || typeof error !== "number") return { value, low: null, high: null };
  const half = tQuantile(0.975, records - 2) * error;
  return { value, low: value - half, high: value + half, error };
}

const named =
  (value: string, low = "ci95_low", high = "ci95_high") =>
  (fields: MethodFields): Interval => ({ value: fields[value], low: fields[low], high: fields[high] });

const list: readonly RelationMethod[] = [
  { method: theilSen, is: "slope", read: named("slope", "ci_low", "ci_high") },
  { method: deming, is: "slope", usesErrors: true, read: slopeGiveOrTake },
  { method: york, is: "slope", usesErrors: true, read: slopeGiveOrTake },
  { method: reducedMajorAxis, is: "slope", read: named("slope") },
  { method: robustRegression, is: "slope", read: mmSlope },
  { method: bootstrap, is: "slope", asks: { statistic: "slope" }, read: named("estimate", "ci_low", "ci_high") },
  { method: pearson, is: "correlation", read: named("r") },
  { method: spearman, is: "correlation", read: named("rho") },
  { method: kendall, is: "correlation", read: named("tau_b") },
];

/** By the id that a question may name. */
export const relationMethods: ReadonlyMap<string, RelationMethod> = new Map(list.map((one) => [one.method.id, one]));

/** The ids that name a line fitted by least squares, with the interval of that name. */
export const LINE_METHODS: readonly string[] = [
  "ols",
  "ols-multiple",
  "robust-se",
  "cluster-robust",
  "ancova",
  "power-law",
];

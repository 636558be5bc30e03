// What the options of a case say beside the inputs of its method: read by its adapter, or a remark on what the method does anyway. Any other is declined.

import { inputSpec } from "../../../src/cli/inputs-from-json.ts";
import type { InputSpec } from "../../../src/core/base/index.ts";
import { columnsOf, type Inputs, modelOf, type StatsCase } from "../stats-case.ts";
import { modelText } from "./model-text.ts";

type Said = Readonly<Record<string, RegExp>>;
const ANY = /^/;

/** Of every method: what the case is of, and which columns are meant. */
const ofAll: Said = {
  of: ANY,
  refusal_also_accepted: ANY,
  model: ANY,
  response: ANY,
  order_of_coefficients: /intercept/,
};
const groups: Said = { group: ANY, value: ANY, group_order: ANY };
const resampled: Said = {
  difference: ANY,
  contrast: ANY,
  group: ANY,
  by: ANY,
  value: ANY,
  group_order: ANY,
};
const twoGroups: Said = { ...resampled, statistic: ANY };
const againstNull: Said = { ...twoGroups, null_value: ANY, mu: ANY };

/** By method, what an option must say so that the method is the one that is meant. */
const ofMethods: Readonly<Record<string, Said>> = {
  ancova: { ...groups, covariate: ANY, adjusted_means_at: /mean of the covariate/ },
  "anova-nist": groups,
  "anova-welch": groups,
  "kruskal-wallis": groups,
  "games-howell": { ...groups, pairs: ANY, difference: /^(first|second) minus (first|second)$/ },
  "binomial-test": { p0: ANY, p: ANY, null_value: ANY },
  "bland-altman": { difference: /^\w+(\s*-\s*|\s+minus\s+)\w+$/, multiplier: /[\d.]+$/ },
  bootstrap: { ...resampled, block: ANY, x: ANY, y: ANY, quantile: /type 1|inverse of the empirical/, mode: ANY },
  "cliff-delta": { ...twoGroups, quantile: /^(normal|t)\b|student/i },
  "cluster-robust": { cluster: ANY, type: /CR/ },
  cusum: { column: ANY },
  deming: { variance_ratio_means: /error of y\) \/ var\(error of x/, df: /n - 2/, ci: /jackknife/ },
  descriptive: { column: ANY },
  "descriptive-nist": { column: ANY },
  distribution: { parameters: ANY },
  "en-zeta": { U_means: /k\s*=\s*[\d.]+|standard/ },
  equivalence: { ...twoGroups, margin: ANY },
  ewma: { column: ANY },
  "fisher-exact": { or: ANY, odds_ratio: ANY, null_value: ANY },
  "firth-logistic": { predictors: ANY, se: /unpenali[sz]ed/ },
  "gauge-rr": { design: ANY, pool_interaction_when: ANY, negative_components: /zero/, order: ANY },
  gum: {
    combine: /root sum of squares/,
    df: /Welch-Satterthwaite/,
    null_df_means: /infinite/,
    method: /simultaneous|covariance|independent/,
    shared: ANY,
    correlations: ANY,
    correlation: ANY,
    x0: ANY,
  },
  "hedges-g": { ...twoGroups, correction: /exact/ },
  "individuals-chart": { column: ANY, d2: /[\d.]+$/ },
  kendall: { ci: /0\.437/ },
  "krippendorff-alpha": { missing: ANY },
  "mann-whitney": twoGroups,
  mcnemar: { table: ANY },
  "mixed-model": { random: ANY, criterion: /REML/, group_order: /alphabetical|,/, reported_scale: /^sd\b/ },
  "ols-multiple": { predict_at: /^\{/ },
  "ols-weighted": { weights: /proportional to|^\S+$/ },
  "partial-correlation": { between: ANY, given: ANY },
  "paired-t": againstNull,
  permutation: {
    ...resampled,
    mode: ANY,
    design: ANY,
    paired: ANY,
    block: ANY,
    within: ANY,
    strata: ANY,
    x: ANY,
    y: ANY,
  },
  "power-law": { form: /log y on log x/ },
  "power-t": { type: ANY },
  "proportional-odds": {
    predictors: ANY,
    coefficient_order: ANY,
    threshold_order: ANY,
    weights: ANY,
    sign: /threshold_k - x'b/,
  },
  "rig-linearity": { model: /^bias\s*=\s*\w+\s*\+\s*\w+\s*\*\s*reference$/ },
  "robust-se": { df: /^n\s*-\s*p/ },
  spearman: { ci: /1 \+ r\^2\s*\/\s*2/ },
  "theil-sen": { rank_rule: /floor\(\(N\s*-\s*C\)\s*\/\s*2\)/, ties: /left out/ },
  "welch-t": twoGroups,
  york: { weights: /1\s*\/\s*variance/ },
};

/** Options whose names are made of symbols of the case: `r_ab`, a correlation. */
const ofSymbols: Readonly<Record<string, RegExp>> = { gum: /^r_\w+$/, "monte-carlo-uncertainty": /^r_\w+$/ };

/** Methods that take a line without a constant, or read the words of a model themselves. */
const WITHOUT_CONSTANT = new Set(["ols-origin", "ols-nist", "lad", "mixed-model"]);
const OWN_MODELS = new Set(["ols-nist", "gum", "monte-carlo-uncertainty", "rig-linearity"]);

/** What a model `y ~ a + b` holds that the method does not fit: a term that is no column, no constant, more terms than it takes. */
function isUnreadModel(one: StatsCase, method: string, specs: Readonly<Record<string, InputSpec>>): boolean {
  if (OWN_MODELS.has(method) || one.options.model === undefined) return false;
  const { response, predictors, constant } = modelOf(one);
  const columns = columnsOf(one);
  const isTerm = (term: string) => term in columns || (method === "mixed-model" && /^\(1 \|/.test(term));
  const takesSeveral = ["x1", "x2", "z1"].some((name) => name in specs) || method === "mixed-model";
  return (
    !(response in columns) ||
    !predictors.every(isTerm) ||
    (!constant && !WITHOUT_CONSTANT.has(method)) ||
    (constant && method === "ols-origin") ||
    (predictors.length > 1 && !takesSeveral)
  );
}

/** Options that name a column, where they are one word. */
const COLUMNS = /^(block|within|strata|cluster|weights|random|group|covariate|response|column)$/;
const isMissingColumn = (one: StatsCase, name: string, value: unknown): boolean =>
  COLUMNS.test(name) && typeof value === "string" && /^\S+$/.test(value) && !(value in columnsOf(one));

/** Places by the names of predictors, of which one is none of the model's. */
const isElsewhere = (one: StatsCase, name: string, value: unknown): boolean =>
  name === "predict_at" &&
  typeof value === "object" &&
  value !== null &&
  !Array.isArray(value) &&
  Object.keys(value).some((each) => !modelOf(one).predictors.includes(each));

const inWords = (value: unknown): string => (typeof value === "string" ? value : JSON.stringify(value));

/**
 * The options of a case that would be passed over in silence: those that are neither inputs that the method is given, nor said above, nor a remark,
 * which is text of more than one word under a name that is no input, and a model that is not the method's. Null says nothing.
 */
export function unreadOptions(
  one: StatsCase,
  method: string,
  specs: Readonly<Record<string, InputSpec>>,
  given: Inputs,
): readonly string[] {
  const said = { ...ofAll, ...ofMethods[method] };
  const isInOtherUnits = method === "gum" && modelText(String(one.options.model ?? "")).unitsIn !== null;
  const model = isInOtherUnits || isUnreadModel(one, method, specs) ? ["model"] : [];
  const others = Object.entries(one.options).flatMap(([name, value]) => {
    if (ofSymbols[method]?.test(name) || value === null || value === undefined) return [];
    if (isMissingColumn(one, name, value) || isElsewhere(one, name, value)) return [name];
    const words = said[name];
    if (words !== undefined) return words.test(inWords(value)) ? [] : [name];
    if (inputSpec(specs, name) !== undefined) return given[name] === undefined ? [name] : [];
    const isColumn = typeof value === "string" && value in columnsOf(one);
    return typeof value === "string" && /\s/.test(value.trim()) && !isColumn ? [] : [name];
  });
  // A predictor that an option names and that is no column.
  const absent = Object.entries(given).flatMap(([name, value]) =>
    /^[xz]\d+$/.test(name) && value === undefined ? [name] : [],
  );
  return [...model, ...others, ...absent];
}

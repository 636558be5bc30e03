import { declined, type Method, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { chiSquareUpperTail, compensatedSum } from "../../numerics/index.ts";

/** Two results with expanded uncertainties: |x1 - x2| / sqrt(U1^2 + U2^2), agreement up to 1. */
export const resultsAgree: Method = {
  id: "results-agree",
  name: "Whether two results agree (En)",
  answers: "agreement",
  needs: {},
  inputs: {
    first: { kind: "quantity", meaning: "one result" },
    firstExpanded: { kind: "quantity", like: "first", meaning: "its expanded uncertainty (k = 2)" },
    second: { kind: "quantity", like: "first", meaning: "the other result" },
    secondExpanded: { kind: "quantity", like: "first", meaning: "its expanded uncertainty (k = 2)" },
  },
  fields: {
    En: { meaning: "difference over its expanded uncertainty" },
    agrees: { meaning: "whether that is 1 or less" },
  },
  source: { citation: "ISO/IEC 17043; ISO 13528, En number", basis: "memory" },
  run: (inputs) => {
    const { first, firstExpanded, second, secondExpanded } = inputs;
    for (const name of ["first", "firstExpanded", "second", "secondExpanded"])
      if (typeof inputs[name] !== "number" || !Number.isFinite(inputs[name]))
        return declined("out-of-domain", { name, needed: "a number" });
    for (const name of ["firstExpanded", "secondExpanded"])
      if (Number(inputs[name]) < 0) return declined("negative-uncertainty", { name });
    const scale = Math.hypot(Number(firstExpanded), Number(secondExpanded));
    const En = Math.abs(Number(first) - Number(second)) / scale;
    return Number.isFinite(En)
      ? succeeded({ En, agrees: En <= 1 })
      : declined("out-of-domain", { name: "firstExpanded", needed: "an uncertainty above zero in one of the two" });
  },
};

function pairsFrom({
  values,
  uncertainties,
}: MethodInputs): Outcome<readonly { readonly x: number; readonly u: number }[]> {
  if (!Array.isArray(values) || !Array.isArray(uncertainties) || values.length !== uncertainties.length)
    return declined("out-of-domain", { name: "uncertainties", needed: "a list as long as values" });
  const pairs = values.flatMap((x: unknown, i) => {
    const u: unknown = uncertainties[i];
    return typeof x === "number" && typeof u === "number" && !Number.isNaN(x) && !Number.isNaN(u) ? [{ x, u }] : [];
  });
  if (pairs.length < 1) return declined("too-few-records", { have: 0, need: 1 });
  if (pairs.some(({ u }) => u < 0)) return declined("negative-uncertainty", { name: "a value" });
  if (pairs.some(({ x, u }) => !Number.isFinite(x) || !Number.isFinite(u) || u === 0))
    return declined("out-of-domain", {
      name: "uncertainties",
      needed: "finite values, each with an uncertainty above 0",
    });
  return succeeded(pairs);
}

/** Independent results of one quantity combined by 1/u^2, with the check whether they agree. */
export const weightedMean: Method = {
  id: "weighted-mean",
  name: "Mean of results weighted by their uncertainties",
  answers: "agreement",
  needs: {},
  inputs: {
    values: { kind: "quantities", meaning: "results of one quantity, independent" },
    uncertainties: { kind: "quantities", like: "values", meaning: "their standard uncertainties" },
  },
  fields: {
    n: { meaning: "results used" },
    mean: { meaning: "weighted mean" },
    u: { meaning: "its standard uncertainty" },
    chi_square: { meaning: "sum of squared differences from the mean, each over its uncertainty" },
    df: { meaning: "degrees of freedom, n - 1" },
    p: { meaning: "upper tail probability of that sum" },
    birge_ratio: { meaning: "root of the sum over its degrees of freedom; above 1 the uncertainties are too small" },
  },
  source: { citation: "R. T. Birge (1932), Physical Review 40, 207-227", basis: "published" },
  run: (inputs) => {
    const pairs = pairsFrom(inputs);
    if (!pairs.ok) return pairs;
    const least = Math.min(...pairs.value.map(({ u }) => u));
    const weights = pairs.value.map(({ u }) => (least / u) ** 2);
    const whole = compensatedSum(weights);
    const mean = compensatedSum(pairs.value.map(({ x }, i) => x * ((weights[i] as number) / whole)));
    const chiSquare = compensatedSum(pairs.value.map(({ x, u }) => ((x - mean) / u) ** 2));
    const df = pairs.value.length - 1;
    const u = least / Math.sqrt(whole);
    if (![mean, u, chiSquare].every(Number.isFinite)) return declined("not-finite", { name: "the mean" });
    return succeeded({
      n: df + 1,
      mean,
      u,
      chi_square: chiSquare,
      df,
      p: df > 0 ? chiSquareUpperTail(chiSquare, df) : null,
      birge_ratio: df > 0 ? Math.sqrt(chiSquare / df) : null,
    });
  },
  cautions: (_, { p }) =>
    typeof p === "number" && p < 0.05
      ? [{ code: "results-disagree", facts: { how: `p ${p < 0.001 ? "below 0.001" : p.toFixed(3)}` } }]
      : [],
};

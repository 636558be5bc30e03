import { meanOfReadings } from "../../columns/index.ts";
import { compensatedSum, median } from "../../numerics/index.ts";
import type { GroupFunction } from "../group-function.ts";

const definition = { citation: "definition", basis: "standard" } as const;
const meanOf = (values: Float64Array): number =>
  values.length === 0 ? Number.NaN : compensatedSum(values) / values.length;
const same = (values: Float64Array, weight: number): Float64Array => new Float64Array(values.length).fill(weight);

function spread(values: Float64Array): number {
  if (values.length < 2) return Number.NaN;
  const mean = meanOf(values);
  return Math.sqrt(compensatedSum(values.map((value) => (value - mean) ** 2)) / (values.length - 1));
}

/** The first place of a value gets the whole weight. */
function onlyAt(values: Float64Array, value: number): Float64Array {
  const weights = new Float64Array(values.length);
  const at = values.indexOf(value);
  if (at >= 0) weights[at] = 1;
  return weights;
}

function medianWeights(values: Float64Array): Float64Array {
  const order = Array.from(values.keys()).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0));
  const weights = new Float64Array(values.length);
  const [low, high] = [order[Math.floor((order.length - 1) / 2)], order[Math.floor(order.length / 2)]];
  for (const at of [low, high]) if (at !== undefined) weights[at] = (weights[at] ?? 0) + 0.5;
  return weights;
}

/** Functions over the records of a group. Missing records are passed over, but a sum with a missing record is missing. */
export const groupFunctions: readonly GroupFunction[] = [
  {
    id: "mean",
    name: "mean, its uncertainty the standard error of the spread beside the records' own",
    gives: "same",
    evaluate: meanOf,
    weights: (values) => same(values, 1 / values.length),
    scatter: (values) => meanOfReadings(values).standardError,
    source: { citation: "JCGM 100:2008 (GUM), 4.2.1 to 4.2.3", basis: "standard" },
    example: "mean of density by species",
  },
  {
    id: "median",
    name: "median",
    gives: "same",
    evaluate: (values) => (values.length === 0 ? Number.NaN : median(values)),
    weights: medianWeights,
    source: definition,
    example: "median of density by species",
  },
  {
    id: "min",
    name: "smallest",
    gives: "same",
    evaluate: (values) => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
    weights: onlyAt,
    source: definition,
    example: "min of density by species",
  },
  {
    id: "max",
    name: "largest",
    gives: "same",
    evaluate: (values) => values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
    weights: onlyAt,
    source: definition,
    example: "max of density by species",
  },
  {
    id: "sum",
    name: "sum",
    gives: "same",
    needsAll: true,
    evaluate: (values) => (values.length === 0 ? Number.NaN : compensatedSum(values)),
    weights: (values) => same(values, 1),
    source: definition,
    example: "sum of mass by tree",
  },
  {
    id: "count",
    name: "how many have a value",
    gives: "number",
    evaluate: (values) => values.length,
    weights: (values) => same(values, 0),
    source: definition,
    example: "count of mass by tree",
  },
  {
    id: "sd",
    name: "standard deviation",
    gives: "same",
    evaluate: spread,
    weights: (values, result) => {
      const mean = meanOf(values);
      return values.map((value) => (result === 0 ? 0 : (value - mean) / ((values.length - 1) * result)));
    },
    source: definition,
    example: "sd of density by species",
  },
];

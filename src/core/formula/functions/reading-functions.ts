import { meanOfReadings } from "../../columns/index.ts";
import { dimensionless } from "../../units/index.ts";
import type { FormulaFunction } from "../formula-function.ts";

const source = { citation: "JCGM 100:2008 (GUM), 4.2.1 to 4.2.3", basis: "standard" } as const;
const readings = [
  { name: "x", takes: "any", meaning: "a reading" },
  { name: "y", takes: "same", meaning: "another reading of the same thing" },
] as const;
const eachBy = (values: readonly number[], partial: (value: number) => number): number[] =>
  values.map((value) => (Number.isNaN(value) ? 0 : partial(value)));

/** Functions over several readings of one thing in one record: `mean(h1, h2, h3)`. Missing readings are passed over. */
export const readingFunctions: readonly FormulaFunction[] = [
  {
    id: "mean",
    name: "mean of several readings, its uncertainty the standard error of their spread beside their own",
    arguments: readings,
    repeats: true,
    skipsMissing: true,
    dimension: ([first]) => first ?? dimensionless,
    unit: "first",
    evaluate: (...values) => meanOfReadings(values).mean,
    partials: (...values) => eachBy(values, () => 1 / meanOfReadings(values).count),
    scatter: (...values) => meanOfReadings(values).standardError,
    source,
    example: "mean(2.3 mm, 2.4 mm, 2.35 mm)",
  },
  {
    id: "sd",
    name: "standard deviation of several readings",
    arguments: readings,
    repeats: true,
    skipsMissing: true,
    dimension: ([first]) => first ?? dimensionless,
    unit: "first",
    evaluate: (...values) => meanOfReadings(values).spread,
    partials: (...values) => {
      const { count, mean, spread } = meanOfReadings(values);
      return eachBy(values, (value) => (spread === 0 ? 0 : (value - mean) / ((count - 1) * spread)));
    },
    source,
    example: "sd(2.3 mm, 2.4 mm, 2.35 mm)",
  },
];

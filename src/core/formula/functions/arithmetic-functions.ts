import type { Dimension } from "../../units/index.ts";
import { dimensionless, raiseDimension } from "../../units/index.ts";
import type { FormulaFunction } from "../formula-function.ts";

const definition = { citation: "definition", basis: "standard" } as const;
const first = ([dimension]: readonly Dimension[]): Dimension => dimension ?? dimensionless;
const plain = (): Dimension => dimensionless;
const number = { name: "x", takes: dimensionless, meaning: "a plain number" } as const;
const quantity = { name: "x", takes: "any", meaning: "a quantity" } as const;
const onlyAt = (values: readonly number[], chosen: number): number[] => values.map((_, i) => (i === chosen ? 1 : 0));

/** Functions of plain arithmetic. */
export const arithmeticFunctions: readonly FormulaFunction[] = [
  {
    id: "sqrt",
    name: "square root",
    arguments: [quantity],
    dimension: (given) => raiseDimension(first(given), [1, 2]),
    unit: null,
    evaluate: (x = Number.NaN) => Math.sqrt(x),
    partials: (x = Number.NaN) => [0.5 / Math.sqrt(x)],
    source: definition,
    example: "sqrt(4 m2)",
  },
  {
    id: "abs",
    name: "size without sign",
    arguments: [quantity],
    dimension: first,
    unit: "first",
    evaluate: (x = Number.NaN) => Math.abs(x),
    partials: (x = Number.NaN) => [Math.sign(x)],
    source: definition,
    example: "abs(-2 mm)",
  },
  {
    id: "log",
    name: "natural logarithm",
    arguments: [number],
    dimension: plain,
    unit: "1",
    evaluate: (x = Number.NaN) => Math.log(x),
    partials: (x = Number.NaN) => [1 / x],
    source: definition,
    example: "log(2)",
  },
  {
    id: "log10",
    name: "logarithm to base ten",
    arguments: [number],
    dimension: plain,
    unit: "1",
    evaluate: (x = Number.NaN) => Math.log10(x),
    partials: (x = Number.NaN) => [1 / (x * Math.LN10)],
    source: definition,
    example: "log10(100)",
  },
  {
    id: "exp",
    name: "exponential",
    arguments: [number],
    dimension: plain,
    unit: "1",
    evaluate: (x = Number.NaN) => Math.exp(x),
    partials: (x = Number.NaN) => [Math.exp(x)],
    source: definition,
    example: "exp(1)",
  },
  {
    id: "min",
    name: "smallest of several",
    arguments: [quantity, { name: "y", takes: "same", meaning: "of the same kind" }],
    repeats: true,
    dimension: first,
    unit: "first",
    evaluate: Math.min,
    partials: (...values) => onlyAt(values, values.indexOf(Math.min(...values))),
    source: definition,
    example: "min(2 mm, 3 mm)",
  },
  {
    id: "max",
    name: "largest of several",
    arguments: [quantity, { name: "y", takes: "same", meaning: "of the same kind" }],
    repeats: true,
    dimension: first,
    unit: "first",
    evaluate: Math.max,
    partials: (...values) => onlyAt(values, values.indexOf(Math.max(...values))),
    source: definition,
    example: "max(2 mm, 3 mm)",
  },
  {
    id: "round",
    name: "nearest multiple",
    arguments: [quantity, { name: "to", takes: "same", meaning: "rounded to multiples of this" }],
    dimension: first,
    unit: "first",
    evaluate: (x = Number.NaN, to = Number.NaN) => Math.round(x / to) * to,
    // Rounding does not make a measurement better: the uncertainty passes through.
    partials: () => [1, 0],
    source: definition,
    example: "round(2.34 mm, 0.1 mm)",
  },
];

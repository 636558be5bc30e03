/** A function of one number with its first and second derivatives. */
export type ElementaryFunction = {
  readonly value: (x: number) => number;
  readonly first: (x: number) => number;
  readonly second: (x: number) => number;
};

const logarithm: ElementaryFunction = { value: Math.log, first: (x) => 1 / x, second: (x) => -1 / (x * x) };

/** What a model may call. Source: calculus; Abramowitz and Stegun, chapters 4.1 to 4.5. */
export const elementaryFunctions: Readonly<Record<string, ElementaryFunction>> = {
  sqrt: { value: Math.sqrt, first: (x) => 0.5 / Math.sqrt(x), second: (x) => -0.25 / (x * Math.sqrt(x)) },
  exp: { value: Math.exp, first: Math.exp, second: Math.exp },
  log: logarithm,
  ln: logarithm,
  log10: {
    value: Math.log10,
    first: (x) => 1 / (x * Math.LN10),
    second: (x) => -1 / (x * x * Math.LN10),
  },
  sin: { value: Math.sin, first: Math.cos, second: (x) => -Math.sin(x) },
  cos: { value: Math.cos, first: (x) => -Math.sin(x), second: (x) => -Math.cos(x) },
  tan: {
    value: Math.tan,
    first: (x) => 1 + Math.tan(x) ** 2,
    second: (x) => 2 * Math.tan(x) * (1 + Math.tan(x) ** 2),
  },
  asin: { value: Math.asin, first: (x) => 1 / Math.sqrt(1 - x * x), second: (x) => x / (1 - x * x) ** 1.5 },
  acos: { value: Math.acos, first: (x) => -1 / Math.sqrt(1 - x * x), second: (x) => -x / (1 - x * x) ** 1.5 },
  atan: { value: Math.atan, first: (x) => 1 / (1 + x * x), second: (x) => (-2 * x) / (1 + x * x) ** 2 },
  sinh: { value: Math.sinh, first: Math.cosh, second: Math.sinh },
  cosh: { value: Math.cosh, first: Math.sinh, second: Math.cosh },
  tanh: {
    value: Math.tanh,
    first: (x) => 1 - Math.tanh(x) ** 2,
    second: (x) => -2 * Math.tanh(x) * (1 - Math.tanh(x) ** 2),
  },
  abs: { value: Math.abs, first: Math.sign, second: () => 0 },
};

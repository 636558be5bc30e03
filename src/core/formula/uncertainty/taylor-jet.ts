import { power } from "../../base/index.ts";
import { type ElementaryFunction, elementaryFunctions } from "./elementary-functions.ts";
import type { Model } from "./model.ts";

/** Value of a model at a place, its first derivatives (n) and second derivatives (n x n, row by row). */
export type Jet = { readonly value: number; readonly gradient: Float64Array; readonly hessian: Float64Array };

const constant = (value: number, n: number): Jet => ({
  value,
  gradient: new Float64Array(n),
  hessian: new Float64Array(n * n),
});

function variable(value: number, at: number, n: number): Jet {
  const jet = constant(value, n);
  jet.gradient[at] = 1;
  return jet;
}

/** a x + b y for the sum and the difference. */
function linear(x: Jet, y: Jet, sign: 1 | -1): Jet {
  return {
    value: x.value + sign * y.value,
    gradient: x.gradient.map((one, i) => one + sign * (y.gradient[i] as number)),
    hessian: x.hessian.map((one, i) => one + sign * (y.hessian[i] as number)),
  };
}

/** (x y)'' = x'' y + x' y' + y' x' + x y''. */
function product(x: Jet, y: Jet): Jet {
  const n = x.gradient.length;
  const hessian = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      hessian[i * n + j] =
        (x.hessian[i * n + j] as number) * y.value +
        (x.gradient[i] as number) * (y.gradient[j] as number) +
        (x.gradient[j] as number) * (y.gradient[i] as number) +
        x.value * (y.hessian[i * n + j] as number);
  return {
    value: x.value * y.value,
    gradient: x.gradient.map((one, i) => one * y.value + x.value * (y.gradient[i] as number)),
    hessian,
  };
}

/** g(x)' = g'(x) x' and g(x)'' = g'(x) x'' + g''(x) x' x'. */
function composed(x: Jet, { value, first, second }: ElementaryFunction): Jet {
  const n = x.gradient.length;
  const [slope, bend] = [first(x.value), second(x.value)];
  const hessian = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const across = (x.gradient[i] as number) * (x.gradient[j] as number);
      const own = x.hessian[i * n + j] as number;
      hessian[i * n + j] = (own === 0 ? 0 : slope * own) + (across === 0 ? 0 : bend * across);
    }
  return { value: value(x.value), gradient: x.gradient.map((one) => (one === 0 ? 0 : slope * one)), hessian };
}

const reciprocal: ElementaryFunction = {
  value: (x) => 1 / x,
  first: (x) => -1 / (x * x),
  second: (x) => 2 / (x * x * x),
};
const raisedTo = (p: number): ElementaryFunction => ({
  value: (x) => power(x, p),
  first: (x) => (p === 0 ? 0 : p * power(x, p - 1)),
  second: (x) => (p === 0 || p === 1 ? 0 : p * (p - 1) * power(x, p - 2)),
});
const isConstant = ({ gradient }: Jet): boolean => gradient.every((one) => one === 0);

function raised(x: Jet, y: Jet): Jet {
  if (isConstant(y)) return composed(x, raisedTo(y.value));
  const { exp, log } = elementaryFunctions as { exp: ElementaryFunction; log: ElementaryFunction };
  return composed(product(y, composed(x, log)), exp);
}

/**
 * Value and exact derivatives of a model, first and second, carried through its steps (no differences, no step length).
 * values: one a name of model.inputs. Result: NaN or infinite where the model has no value or no slope there.
 * Source: A. Griewank and A. Walther (2008), Evaluating Derivatives, chapters 3 and 13.
 */
export function taylorJet(model: Model, values: ArrayLike<number>): Jet {
  const n = model.inputs.length;
  const stack: Jet[] = [];
  const take = (): Jet => stack.pop() ?? constant(Number.NaN, n);
  for (const step of model.steps) {
    if (step.kind === "number") stack.push(constant(step.value, n));
    else if (step.kind === "input") stack.push(variable(values[step.at] as number, step.at, n));
    else if (step.kind === "call") stack.push(composed(take(), elementaryFunctions[step.name] ?? reciprocal));
    else {
      const y = take();
      const x = take();
      if (step.operator === "+") stack.push(linear(x, y, 1));
      else if (step.operator === "-") stack.push(linear(x, y, -1));
      else if (step.operator === "*") stack.push(product(x, y));
      else if (step.operator === "/") stack.push(product(x, composed(y, reciprocal)));
      else stack.push(raised(x, y));
    }
  }
  const jet = take();
  return { ...jet, value: modelValue(model, values) };
}

/** Value of a model at a place: plain arithmetic, so that a / b is rounded once. */
export function modelValue(model: Model, values: ArrayLike<number>): number {
  const stack: number[] = [];
  const take = (): number => stack.pop() ?? Number.NaN;
  for (const step of model.steps) {
    if (step.kind === "number") stack.push(step.value);
    else if (step.kind === "input") stack.push(values[step.at] as number);
    else if (step.kind === "call") stack.push(elementaryFunctions[step.name]?.value(take()) ?? Number.NaN);
    else {
      const [y, x] = [take(), take()];
      if (step.operator === "+") stack.push(x + y);
      else if (step.operator === "-") stack.push(x - y);
      else if (step.operator === "*") stack.push(x * y);
      else if (step.operator === "/") stack.push(x / y);
      else stack.push(power(x, y));
    }
  }
  return take();
}

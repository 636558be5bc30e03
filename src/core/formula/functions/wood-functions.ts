// Every quantity of wood physics is a function of formulas: `bar-stiffness` of the method catalogue is bar_stiffness(mass, length, …).
import type { Method } from "../../base/index.ts";
import { type Unit, unitFromCode, unitFromText } from "../../units/index.ts";
import {
  barYoungsModulus,
  bendingStiffness,
  density,
  impedance,
  radiationRatio,
  soundSpeed,
  woodMethods,
} from "../../wood/index.ts";
import type { FormulaFunction } from "../formula-function.ts";

type Kernel = (...values: number[]) => number;

/** A function that is a constant times powers of its arguments: then its partial derivatives are exact, exponent * value / argument. */
type PowerLaw = { readonly kernel: Kernel; readonly exponents: readonly number[] };

/** Functions called once a row: the plain function, all of whose arguments must be above zero, in place of the method with its checks. */
const powerLaws: ReadonlyMap<string, PowerLaw> = new Map<string, PowerLaw>([
  ["density", { kernel: density, exponents: [1, -1, -1, -1] }],
  ["bar-stiffness", { kernel: barYoungsModulus, exponents: [1, 3, -1, -3, 2, 1] }],
  ["radiation-ratio", { kernel: radiationRatio, exponents: [0.5, -1.5] }],
  ["sound-speed", { kernel: soundSpeed, exponents: [0.5, -0.5] }],
  ["impedance", { kernel: impedance, exponents: [0.5, 0.5] }],
]);

const partialsOf =
  ({ kernel, exponents }: PowerLaw) =>
  (...values: number[]): readonly number[] => {
    const result = kernel(...values);
    return values.map((value, k) => ((exponents[k] ?? 0) * result) / value);
  };
const plainKernels: ReadonlyMap<string, Kernel> = new Map<string, Kernel>([
  [
    "bending-stiffness",
    (modulus = Number.NaN, thickness = Number.NaN, product = 0) =>
      modulus > 0 && thickness > 0 && product >= 0 && product < 1
        ? bendingStiffness(modulus, thickness, product)
        : Number.NaN,
  ],
]);

const unitOf = (code: string | undefined): Unit =>
  code === undefined ? unitFromCode("1") : (unitFromText(code) ?? unitFromCode(code));

const guarded =
  (kernel: Kernel): Kernel =>
  (...values) => {
    for (let i = 0; i < values.length; i++) if (!((values[i] ?? 0) > 0)) return Number.NaN;
    return kernel(...values);
  };

function evaluator(method: Method, names: readonly string[], field: string): Kernel {
  const power = powerLaws.get(method.id);
  if (power) return guarded(power.kernel);
  return (
    plainKernels.get(method.id) ??
    ((...values) => {
      const inputs: Record<string, number> = {};
      for (const [i, value] of values.entries()) inputs[names[i] ?? ""] = value;
      const outcome = method.run(inputs);
      const found = outcome.ok ? outcome.value[field] : null;
      return typeof found === "number" ? found : Number.NaN;
    })
  );
}

/** The function of a method, or null if it takes or gives anything but single quantities. */
function functionOfMethod(method: Method): FormulaFunction | null {
  const inputs = Object.entries(method.inputs);
  const [field, spec] = Object.entries(method.fields)[0] ?? [];
  if (
    field === undefined ||
    spec === undefined ||
    inputs.some(([, { kind }]) => kind !== "quantity" && kind !== "number")
  )
    return null;
  const units = inputs.map(([, input]) => unitOf(input.dimension));
  const result = unitOf(spec.dimension);
  const id = method.id.replaceAll("-", "_");
  const power = powerLaws.get(method.id);
  return {
    id,
    name: method.name,
    arguments: inputs.map(([name, input], i) => ({
      name: wordsOf(name),
      takes: (units[i] ?? unitFromCode("1")).dimension,
      meaning: input.meaning,
      ...(input.optional ? { optional: true } : {}),
    })),
    dimension: () => result.dimension,
    unit: result.code,
    evaluate: evaluator(
      method,
      inputs.map(([name]) => name),
      field,
    ),
    ...(power ? { partials: partialsOf(power) } : {}),
    source: method.source,
    example: `${id}(${inputs
      .filter(([, input]) => !input.optional)
      .map(([name]) => wordsOf(name))
      .join(", ")})`,
  };
}

const wordsOf = (name: string): string => name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

export const woodFunctions: readonly FormulaFunction[] = woodMethods
  .map(functionOfMethod)
  .filter((each) => each !== null);

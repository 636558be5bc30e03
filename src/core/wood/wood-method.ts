// How a function of wood physics becomes a record of the method catalogue: arguments checked here, so that the function may trust them.
import type { Caution, FieldSpec, InputSpec, Method, MethodFields, Outcome, Source } from "../base/index.ts";
import { declined, domainInWords, isWithinDomain, succeeded } from "../base/index.ts";
import { usualCautions } from "./usual-cautions.ts";
import { type UsualRange, usualRanges } from "./usual-ranges.ts";

/** One argument: its coherent SI unit as `dimension`, its domain, where it lies as a rule, and its default where it may be left out. */
export type WoodInput = InputSpec & { readonly default?: number; readonly usual?: UsualRange };
/** One field of a result, and where it lies as a rule. */
export type WoodField = FieldSpec & { readonly usual?: UsualRange };

type WoodMethod<I extends string, F extends string> = {
  readonly id: string;
  readonly name: string;
  readonly inputs: Readonly<Record<I, WoodInput>>;
  readonly fields: Readonly<Record<F, WoodField>>;
  readonly source: Source;
  /** A condition on several arguments together: what is wrong with these, or null. */
  readonly refuses?: (inputs: Readonly<Record<I, number>>) => { readonly name: string; readonly needed: string } | null;
  readonly run: (inputs: Readonly<Record<I, number>>) => Readonly<Record<F, number>>;
  /** What to know of values outside what the formula is good for. */
  readonly cautions?: (inputs: Readonly<Record<I, number>>, fields: Readonly<Record<F, number>>) => readonly Caution[];
};

/** An argument above zero, in the coherent SI unit `dimension`. */
export const positive = (dimension: string, meaning: string): WoodInput => ({
  kind: "quantity",
  dimension,
  meaning,
  above: 0,
});
/** A density of wood. */
export const woodDensity = (meaning = "density"): WoodInput => ({
  ...positive("kg/m3", meaning),
  usual: usualRanges.density,
});
/** A modulus of elasticity of wood. */
export const woodModulus = (meaning: string): WoodInput => ({ ...positive("Pa", meaning), usual: usualRanges.modulus });
/** A modulus of elasticity of wood as a result. */
export const modulusField = (meaning: string): WoodField => ({ meaning, dimension: "Pa", usual: usualRanges.modulus });
/** A sound speed in wood as a result. */
export const soundSpeedField = (meaning: string): WoodField => ({
  meaning,
  dimension: "m/s",
  usual: usualRanges.soundSpeed,
});
/** An argument of any size. */
export const anyReal = (dimension: string, meaning: string): WoodInput => ({ kind: "quantity", dimension, meaning });
/** An argument of zero or more. */
export const notNegative = (dimension: string, meaning: string): WoodInput => ({
  kind: "quantity",
  dimension,
  meaning,
  atLeast: 0,
});
/** A moisture content; above 300 % it is percent given for a fraction. */
export const moistureInput = (meaning: string): WoodInput => ({ ...notNegative("%MC", meaning), atMost: 3 });
/** An argument that may be left out. */
export const leftOut = (input: WoodInput, otherwise: number): WoodInput => ({
  ...input,
  optional: true,
  default: otherwise,
});

/** The arguments as numbers within their domains, defaults filled in; or which one is not, by name. */
function numbersFrom<I extends string>(
  specs: Readonly<Record<I, WoodInput>>,
  inputs: Readonly<Record<string, unknown>>,
): Outcome<Readonly<Record<I, number>>> {
  const numbers = {} as Record<I, number>;
  for (const name of Object.keys(specs) as I[]) {
    const spec: WoodInput = specs[name];
    const value = inputs[name];
    if (inputs[name] === undefined && spec.default !== undefined) {
      numbers[name] = spec.default;
      continue;
    }
    if (typeof value !== "number" || !Number.isFinite(value) || !isWithinDomain(value, spec))
      return declined("out-of-domain", { name: `${name} (${spec.meaning})`, needed: domainInWords(spec) });
    numbers[name] = value;
  }
  return succeeded(numbers);
}

/** The record of a function: refuses an argument outside its domain by name, and a result that is not finite. */
export function woodMethod<I extends string, F extends string>(method: WoodMethod<I, F>): Method {
  const { id, name, inputs: specs, fields: fieldSpecs, source, cautions } = method;
  function run(inputs: Readonly<Record<string, unknown>>): Outcome<MethodFields> {
    const numbers = numbersFrom(specs, inputs);
    if (!numbers.ok) return numbers;
    const wrong = method.refuses?.(numbers.value);
    if (wrong) return declined("out-of-domain", wrong);
    const fields = method.run(numbers.value);
    for (const field of Object.keys(fields) as F[])
      if (!Number.isFinite(fields[field])) return declined("not-finite", { name: field });
    return succeeded({ ...fields });
  }
  const record = { id, name, answers: "quantity", needs: {}, inputs: specs, fields: fieldSpecs, source, run };
  return {
    ...record,
    cautions: (inputs, fields) => {
      const numbers = numbersFrom(specs, inputs);
      if (!numbers.ok) return [];
      return [
        ...usualCautions({ ...specs, ...fieldSpecs }, { ...numbers.value, ...fields }),
        ...(cautions?.(numbers.value, fields as Readonly<Record<F, number>>) ?? []),
      ];
    },
  };
}

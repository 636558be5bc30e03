// How a function of wood physics becomes a record of the method catalogue: arguments checked here, so that the function may trust them.
import type { FieldSpec, InputSpec, Method, MethodFields, Outcome, Source } from "../base/index.ts";
import { declined, succeeded } from "../base/index.ts";

/** One argument: its coherent SI unit as `dimension`, its domain, and its default where it may be left out. */
export type WoodInput = InputSpec & {
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly default?: number;
};

type WoodMethod<I extends string, F extends string> = {
  readonly id: string;
  readonly name: string;
  readonly inputs: Readonly<Record<I, WoodInput>>;
  readonly fields: Readonly<Record<F, FieldSpec>>;
  readonly source: Source;
  /** A condition on several arguments together: what is wrong with these, or null. */
  readonly refuses?: (inputs: Readonly<Record<I, number>>) => { readonly name: string; readonly needed: string } | null;
  readonly run: (inputs: Readonly<Record<I, number>>) => Readonly<Record<F, number>>;
};

/** An argument above zero, in the coherent SI unit `dimension`. */
export const positive = (dimension: string, meaning: string): WoodInput => ({
  kind: "quantity",
  dimension,
  meaning,
  above: 0,
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
/** An argument that may be left out. */
export const leftOut = (input: WoodInput, otherwise: number): WoodInput => ({
  ...input,
  optional: true,
  default: otherwise,
});

function domainInWords({ above, atLeast, below }: WoodInput): string {
  const low =
    above !== undefined
      ? `a value above ${above}`
      : atLeast !== undefined
        ? `a value of ${atLeast} or more`
        : "a number";
  return below === undefined ? low : `${low} and below ${below}`;
}

const isWithin = (value: number, { above, atLeast, below }: WoodInput): boolean =>
  Number.isFinite(value) &&
  (above === undefined || value > above) &&
  (atLeast === undefined || value >= atLeast) &&
  (below === undefined || value < below);

/** The record of a function: refuses an argument outside its domain by name, and a result that is not finite. */
export function woodMethod<I extends string, F extends string>(method: WoodMethod<I, F>): Method {
  const names = Object.keys(method.inputs) as I[];
  function run(inputs: Readonly<Record<string, unknown>>): Outcome<MethodFields> {
    const numbers = {} as Record<I, number>;
    for (const name of names) {
      const input: WoodInput = method.inputs[name];
      const value = inputs[name] ?? input.default;
      if (typeof value !== "number" || !isWithin(value, input))
        return declined("out-of-domain", { name: `${name} (${input.meaning})`, needed: domainInWords(input) });
      numbers[name] = value;
    }
    const wrong = method.refuses?.(numbers);
    if (wrong) return declined("out-of-domain", wrong);
    const fields = method.run(numbers);
    for (const name of Object.keys(fields) as F[])
      if (!Number.isFinite(fields[name])) return declined("not-finite", { name });
    return succeeded({ ...fields });
  }
  return {
    id: method.id,
    name: method.name,
    answers: "quantity",
    needs: {},
    inputs: method.inputs,
    fields: method.fields,
    source: method.source,
    run,
  };
}

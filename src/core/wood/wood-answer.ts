// How a calculation becomes a record where it may decline by itself, takes words beside numbers, or leaves out what was not given.
import type { Caution, Method, MethodFields, MethodInputs, Outcome, Source } from "../base/index.ts";
import { declined, domainInWords, isWithinDomain, succeeded } from "../base/index.ts";
import { usualCautions } from "./usual-cautions.ts";
import type { WoodField, WoodInput } from "./wood-method.ts";

type Numbers<I extends string> = Readonly<Record<I, number>>;
type WoodAnswer<I extends string> = {
  readonly id: string;
  readonly name: string;
  readonly inputs: Readonly<Record<I, WoodInput>>;
  readonly fields: Readonly<Record<string, WoodField>>;
  readonly source: Source;
  /** numbers: the arguments that are numbers, NaN for one that may be left out and is; given: all, for words. */
  readonly run: (numbers: Numbers<NoInfer<I>>, given: MethodInputs) => Outcome<MethodFields>;
  readonly cautions?: (numbers: Numbers<NoInfer<I>>, fields: MethodFields) => readonly Caution[];
};

/** The arguments as numbers within their domains, defaults filled in, NaN where left out; or which one is not, by name. */
function numbersOf<I extends string>(specs: Readonly<Record<I, WoodInput>>, inputs: MethodInputs): Outcome<Numbers<I>> {
  const numbers = {} as Record<I, number>;
  for (const name of Object.keys(specs) as I[]) {
    const spec: WoodInput = specs[name];
    if (spec.kind === "choice") continue;
    const value = inputs[name] ?? spec.default;
    numbers[name] = Number.NaN;
    if (value === undefined && spec.optional) continue;
    if (typeof value !== "number" || !Number.isFinite(value) || !isWithinDomain(value, spec))
      return declined("out-of-domain", { name: `${name} (${spec.meaning})`, needed: domainInWords(spec) });
    numbers[name] = value;
  }
  return succeeded(numbers);
}

/** The record of such a calculation. Refuses an argument outside its domain by name, and a number of the result that is not finite. */
export function woodAnswer<I extends string>(answer: WoodAnswer<I>): Method {
  const { id, name, inputs: specs, fields: fieldSpecs, source, cautions } = answer;
  function run(inputs: MethodInputs): Outcome<MethodFields> {
    const numbers = numbersOf(specs, inputs);
    if (!numbers.ok) return numbers;
    const found = answer.run(numbers.value, inputs);
    if (!found.ok) return found;
    for (const [field, value] of Object.entries(found.value))
      if ([value].flat().some((each) => typeof each === "number" && !Number.isFinite(each)))
        return declined("not-finite", { name: field });
    return found;
  }
  const record = { id, name, answers: "quantity", needs: {}, inputs: specs, fields: fieldSpecs, source, run };
  return {
    ...record,
    cautions: (inputs, fields) => {
      const numbers = numbersOf(specs, inputs);
      if (!numbers.ok) return [];
      return [
        ...usualCautions({ ...specs, ...fieldSpecs }, { ...numbers.value, ...fields }),
        ...(cautions?.(numbers.value, fields) ?? []),
      ];
    },
  };
}

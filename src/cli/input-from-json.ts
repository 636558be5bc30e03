// One input of a line of the `method` command: a number in coherent SI, {value, unit}, a list of either, or words.
import { declined, type InputSpec, type Outcome, succeeded } from "../core/base/index.ts";
import { dimensionInWords, sameDimension, toSi, type Unit, unitFromText } from "../core/units/index.ts";

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A missing number within a list of numbers is NaN for a method; texts keep null. */
function listed(value: readonly unknown[]): unknown {
  return value.some((each) => typeof each === "string")
    ? value
    : value.map((each) => (each === null ? Number.NaN : each));
}

const converted = (value: unknown, unit: Unit): unknown =>
  Array.isArray(value)
    ? value.map((each: unknown) => converted(each, unit))
    : typeof value === "number"
      ? toSi(value, unit)
      : value;

/**
 * What a method is given for one input. value: as JSON has it; a quantity may be {value, unit} with a unit of the trade or a UCUM code.
 * spec: the input's record, undefined for an input that the method does not list. Refuses an unknown unit and a wrong dimension by the input's name.
 */
export function inputFromJson(name: string, value: unknown, spec: InputSpec | undefined): Outcome<unknown> {
  if (Array.isArray(value)) return succeeded(listed(value));
  if (!isRecord(value) || !("value" in value)) return succeeded(value);
  const text = String(value["unit"] ?? "1");
  const unit = unitFromText(text);
  if (!unit) return declined("out-of-domain", { name: `unit "${text}" of ${name}`, needed: "a unit that is known" });
  const wanted = spec?.dimension === undefined ? null : unitFromText(spec.dimension);
  if (wanted && !sameDimension(unit.dimension, wanted.dimension))
    return declined("wrong-dimension", {
      name,
      found: dimensionInWords(unit.dimension),
      needed: dimensionInWords(wanted.dimension),
    });
  return succeeded(converted(value["value"], unit));
}

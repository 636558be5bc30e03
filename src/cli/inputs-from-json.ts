// All inputs of a line of the `method` command, checked against the record of the method in one place.
import { declined, type InputSpec, type MethodInputs, type Outcome, succeeded } from "../core/base/index.ts";
import { nearestName } from "../core/formula/index.ts";
import { type Dimension, dimensionInWords, sameDimension } from "../core/units/index.ts";
import { amountFromJson } from "./amount-from-json.ts";
import { inputFromJson } from "./input-from-json.ts";

type Specs = Readonly<Record<string, InputSpec>>;

/** The record of an input. A record that lists `x1` and no `x2` means as many as are given: x2, x3, … */
export function inputSpec(specs: Specs, name: string): InputSpec | undefined {
  if (Object.hasOwn(specs, name)) return specs[name];
  const family = /^(.*[^\d])([1-9]\d?)$/.exec(name)?.[1];
  if (family === undefined || Object.hasOwn(specs, `${family}2`) || !Object.hasOwn(specs, `${family}1`))
    return undefined;
  return specs[`${family}1`];
}

/** What an input is a number of, or the first item of a list; null where nothing says so. */
function dimensionOf(value: unknown): Dimension | null {
  const record = typeof value === "object" && value !== null && !Array.isArray(value) ? value : { value };
  const { value: inner, unit } = record as { readonly value?: unknown; readonly unit?: unknown };
  const first: unknown = Array.isArray(inner) ? inner[0] : inner;
  const amount = unit === undefined || typeof first === "object" ? first : { value: first, unit };
  const read = amountFromJson("", amount, { unit: null, difference: false });
  return read.ok ? read.value.dimension : null;
}

/** Declines an input whose dimension is not that of the one that it must be like. */
function alike(specs: Specs, inputs: Readonly<Record<string, unknown>>): Outcome<null> {
  for (const [name, { like }] of Object.entries(specs)) {
    if (like === undefined) continue;
    const [one, other] = [dimensionOf(inputs[like]), dimensionOf(inputs[name])];
    if (one && other && !sameDimension(one, other))
      return declined("wrong-dimension", { name, found: dimensionInWords(other), needed: dimensionInWords(one) });
  }
  return succeeded(null);
}

/**
 * The inputs of a run by the method's record: kinds, units, dimensions, domains and choices. inputs: as JSON has them; null is left out.
 * Declines an input that the record does not list, naming the nearest that it does, and one that is needed and missing.
 */
export function inputsFromJson(specs: Specs, inputs: Readonly<Record<string, unknown>>): Outcome<MethodInputs> {
  const names = Object.keys(specs);
  const made: Record<string, unknown> = Object.create(null);
  for (const [name, value] of Object.entries(inputs)) {
    const spec = inputSpec(specs, name);
    if (!spec)
      return declined("input-unknown", {
        name: name.slice(0, 60),
        nearest: nearestName(name, names) ?? "",
        known: names.join(", "),
      });
    if (value === null || value === undefined) continue;
    const input = inputFromJson(name, value, spec);
    if (!input.ok) return input;
    made[name] = input.value;
  }
  for (const [name, { optional, meaning }] of Object.entries(specs))
    if (!optional && !(name in made)) return declined("input-missing", { name, meaning });
  const checked = alike(specs, inputs);
  return checked.ok ? succeeded(made) : checked;
}

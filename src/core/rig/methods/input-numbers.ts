// Inputs of the rig's methods as plain lists.
import type { MethodInputs } from "../../base/index.ts";

type Input = MethodInputs[string];

/** A list of numbers; a single number is a list of one. Missing values are NaN. */
export function inputNumbers(input: Input): readonly number[] {
  if (typeof input === "number") return [input];
  if (input instanceof Float64Array) return [...input];
  return Array.isArray(input) ? input.map((value: unknown) => (typeof value === "number" ? value : Number.NaN)) : [];
}

/** A list of labels; numbers become their text; null where missing. */
export const inputLabels = (input: Input): readonly (string | null)[] =>
  Array.isArray(input)
    ? input.map((value: unknown) =>
        typeof value === "string" ? value : typeof value === "number" && Number.isFinite(value) ? String(value) : null,
      )
    : [];

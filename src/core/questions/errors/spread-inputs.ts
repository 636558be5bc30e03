import {
  declined,
  type FieldSpec,
  type InputSpec,
  type MethodInputs,
  type Outcome,
  type Source,
  succeeded,
} from "../../base/index.ts";

export const nullSource: Source = {
  citation:
    "K. Pearson (1897), Proceedings of the Royal Society 60, 489-498, for the correlation of indices; derived for powers",
  basis: "derived",
};

export const spreadInput = (meaning: string): InputSpec => ({ kind: "quantity", dimension: "1", meaning });
/** What arithmetic alone gives. */
export const nullFields: Readonly<Record<string, FieldSpec>> = {
  correlation: { meaning: "correlation of the logarithms that arithmetic alone gives", dimension: "1" },
  slopeYOnX: { meaning: "slope of ln y on ln x that arithmetic alone gives", dimension: "1" },
  slopeXOnY: { meaning: "slope of ln x on ln y", dimension: "1" },
};

/** Spreads by name; which is no number, or below zero. */
export function spreadInputs(
  inputs: MethodInputs,
  names: readonly string[],
): Outcome<Readonly<Record<string, number>>> {
  const made: Record<string, number> = {};
  for (const name of names) {
    const value = inputs[name];
    if (typeof value !== "number" || !Number.isFinite(value))
      return declined("out-of-domain", { name, needed: "a spread of logarithms, such as 5 %" });
    if (value < 0) return declined("negative-uncertainty", { name });
    made[name] = value;
  }
  return succeeded(made);
}

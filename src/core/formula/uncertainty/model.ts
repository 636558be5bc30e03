/** One step of a model on a stack of numbers: operands first. */
export type ModelStep =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "input"; readonly at: number }
  | { readonly kind: "call"; readonly name: string }
  | { readonly kind: "operator"; readonly operator: "+" | "-" | "*" | "/" | "^" };

/** A formula of numbers, ready to be run: its name (of `R = V / I`, "R"; "" where it has none), its inputs in order, its steps. */
export type Model = {
  readonly name: string;
  readonly inputs: readonly string[];
  readonly steps: readonly ModelStep[];
};

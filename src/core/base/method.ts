// A catalogue record of a calculation: everything that others need to know of it, as data.
import type { Caution } from "./cautions.ts";
import type { Outcome } from "./outcome.ts";
import type { Source } from "./source.ts";

export type InputSpec = {
  readonly kind:
    | "quantity"
    | "quantities"
    | "table"
    | "label"
    | "labels"
    | "grades"
    | "number"
    | "text"
    | "choice"
    | "yes-no";
  readonly dimension?: string;
  readonly optional?: true;
  /** What a `choice` may be. */
  readonly choices?: readonly string[];
  readonly meaning: string;
};
export type FieldSpec = { readonly meaning: string; readonly dimension?: string };

/** What the data must have before a method is run; checked by one function. */
export type Needs = {
  readonly rows?: number;
  readonly groups?: number;
  readonly distinct?: Readonly<Record<string, number>>;
  readonly positive?: readonly string[];
};

/** Inputs of a run: numbers in coherent SI, arrays of them (NaN for missing), texts and arrays of texts (null for missing), tables of numbers row by row. */
export type MethodInputs = Readonly<
  Record<
    string,
    | number
    | string
    | boolean
    | readonly number[]
    | Float64Array
    | readonly (string | null)[]
    | readonly (readonly number[])[]
    | undefined
  >
>;
export type MethodFields = Readonly<Record<string, unknown>>;

export type Method = {
  readonly id: string;
  readonly name: string;
  /** The kind of answer it serves, or "quantity" for a calculated quantity of wood physics. */
  readonly answers: string;
  readonly needs: Needs;
  readonly inputs: Readonly<Record<string, InputSpec>>;
  readonly fields: Readonly<Record<string, FieldSpec>>;
  readonly source: Source;
  readonly run: (inputs: MethodInputs) => Outcome<MethodFields>;
  /** What to know of these values: where the inputs lie outside what the method is good for. Called only where `run` gave fields. */
  readonly cautions?: (inputs: MethodInputs, fields: MethodFields) => readonly Caution[];
};

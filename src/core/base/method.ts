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
  /** Another input, whose dimension this one shares, whatever it is: a value and its uncertainty. */
  readonly like?: string;
  /** The dimension is a temperature, and a difference of two is meant: 5 °C is 5 K. */
  readonly difference?: true;
  /** Domain of a number, in coherent SI. */
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
  /** Only a whole number will do. */
  readonly whole?: true;
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

/**
 * Inputs of a run, not yet looked at: numbers in coherent SI, lists of them (NaN for missing), texts and lists of texts (null for missing), tables of
 * numbers row by row, records. A method narrows each by the readers of its room and declines what it cannot use.
 */
export type MethodInputs = Readonly<Record<string, unknown>>;
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

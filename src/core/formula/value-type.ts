// What a part of a formula is, before anything is computed.
import type { Column } from "../columns/index.ts";
import type { Dimension, Rational } from "../units/index.ts";
import { dimensionInWords, dimensionless, unitFromCode } from "../units/index.ts";

/** `unit`: canonical code in which it is shown, null for the coherent SI unit. `constant`: its exact value, if it is a plain number of the text. */
export type QuantityType = {
  readonly kind: "quantity";
  readonly dimension: Dimension;
  readonly unit: string | null;
  readonly constant?: Rational;
};

export type ValueType =
  | QuantityType
  | { readonly kind: "yes-no" }
  | { readonly kind: "text" }
  | { readonly kind: "grade"; readonly levels: readonly string[] }
  | { readonly kind: "date" }
  | { readonly kind: "missing" };

export const plainNumber: QuantityType = { kind: "quantity", dimension: dimensionless, unit: "1" };

/** What a column is in a formula. A pitch is a frequency; labels and notes are texts. */
export function typeOfColumn(column: Column): ValueType {
  switch (column.kind) {
    case "quantity":
      return { kind: "quantity", dimension: column.dimension, unit: column.unit };
    case "pitch":
      return { kind: "quantity", dimension: unitFromCode("Hz").dimension, unit: "Hz" };
    case "grade":
      return { kind: "grade", levels: column.levels };
    case "label":
    case "words":
      return { kind: "text" };
    case "date":
      return { kind: "date" };
    case "yes-no":
      return { kind: "yes-no" };
  }
}

const WORDS = {
  "yes-no": "a condition",
  text: "a label",
  grade: "a grade",
  date: "a date",
  missing: "nothing",
} as const;

/** A type as a maker would say it: "length", "a grade". */
export const typeInWords = (type: ValueType): string =>
  type.kind === "quantity" ? dimensionInWords(type.dimension) : WORDS[type.kind];

// A table on its way to other tools: plain values, each column in one unit.
export type ExportedValue = number | string | boolean | null;

/** `kind`: that of the column it was made from; `unit`: UCUM, null where there is none; null among `values` is missing. */
export type ExportedColumn = {
  readonly name: string;
  readonly kind: "quantity" | "label" | "grade" | "date" | "pitch" | "words" | "yes-no" | "uncertainty" | "left-out";
  readonly holds: "numbers" | "texts" | "truths";
  readonly unit: string | null;
  readonly values: readonly ExportedValue[];
  /** Text of the formula that made it. */
  readonly formula?: string;
};
export type ExportedTable = {
  readonly name: string;
  readonly rowCount: number;
  readonly columns: readonly ExportedColumn[];
};

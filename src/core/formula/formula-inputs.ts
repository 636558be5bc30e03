// What a formula reads while it is computed: columns as numbers, values, texts as codes.
import { Defect } from "../base/index.ts";
import type { Column, ColumnTable, Contribution } from "../columns/index.ts";
import type { Amounts } from "./amount.ts";

/** A column as numbers: SI, days, level, 1 and 0, or the code of a text; NaN = missing. */
export type NumberColumn = { readonly numbers: Float64Array; readonly errors: ReadonlyMap<string, Contribution> };

export type FormulaInputs = {
  readonly rowCount: number;
  readonly leftOut: { readonly has: (row: number) => boolean };
  readonly column: (name: string) => NumberColumn;
  readonly value: (name: string) => { readonly value: number; readonly errors: ReadonlyMap<string, number> };
  /** The code of a text: equal texts have equal codes. */
  readonly codeOfText: (text: string) => number;
  readonly textOfCode: (code: number) => string | null;
  /** Sources of error that are one for all rows. */
  readonly isShared: (source: string) => boolean;
};

const noErrors: ReadonlyMap<string, never> = new Map<string, never>();

/** What the errors of a column come from: of a computed column its measured ones, of a measured column itself. */
function errorsOf(column: Column): ReadonlyMap<string, Contribution> {
  if (column.kind !== "quantity") return noErrors;
  if (column.contributions) return column.contributions;
  return column.uncertainty ? new Map([[column.name, { values: column.uncertainty, shared: false }]]) : noErrors;
}

/** The inputs of formulas over a table (or over values alone). */
export function formulaInputs(table: ColumnTable | null, values: Amounts): FormulaInputs {
  const codes = new Map<string, number>();
  const texts: string[] = [];
  const shared = new Set<string>();
  const known = new Map<string, NumberColumn>();
  const codeOfText = (text: string): number => {
    const own = text.normalize("NFC");
    const code = codes.get(own);
    if (code !== undefined) return code;
    codes.set(own, texts.length);
    return texts.push(own) - 1;
  };
  const numbersOf = (column: Column): Float64Array => {
    const missing = Number.NaN;
    switch (column.kind) {
      case "quantity":
        return column.values;
      case "pitch":
        return column.frequencies;
      case "date":
        return column.days;
      case "yes-no":
        return Float64Array.from(column.values, (value) => (value < 0 ? missing : value));
      case "grade":
        return Float64Array.from(column.codes, (code) => (code < 0 ? missing : code));
      case "words":
        return Float64Array.from(column.texts, (text) => (text === null ? missing : codeOfText(text)));
      case "label": {
        const own = column.names.map(codeOfText);
        return Float64Array.from(column.codes, (code) => own[code] ?? missing);
      }
    }
  };
  const column = (name: string): NumberColumn => {
    const before = known.get(name);
    if (before) return before;
    const found = table?.columns.get(name);
    if (!found) throw new Defect(`no column ${name} to compute with`);
    const errors = errorsOf(found);
    for (const [source, contribution] of errors) if (contribution.shared) shared.add(source);
    const made = { numbers: numbersOf(found), errors };
    known.set(name, made);
    return made;
  };
  const value = (name: string) => {
    const found = values.get(name);
    if (!found) throw new Defect(`no value ${name} to compute with`);
    const own =
      found.uncertainty !== null && found.uncertainty > 0
        ? new Map<string, number>([[`value ${name}`, found.uncertainty]])
        : noErrors;
    const errors: ReadonlyMap<string, number> = found.contributions ?? own;
    for (const source of errors.keys()) shared.add(source);
    return { value: found.value ?? Number.NaN, errors };
  };
  return {
    rowCount: table?.rowCount ?? 1,
    leftOut: table?.leftOut ?? new Set<number>(),
    column,
    value,
    codeOfText,
    textOfCode: (code) => texts[code] ?? null,
    isShared: (source) => shared.has(source) || source.startsWith("number at "),
  };
}

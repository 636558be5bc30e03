/**
 * What a workbook keeps of a cell besides its text. `number`: the stored double (`%` already taken in) and the unit that its number
 * format writes; `date`: ISO 8601; `error`: an error result; `lost-formula`: a formula without a stored result.
 */
export type StoredCell =
  | { readonly as: "number"; readonly value: number; readonly unit: string | null }
  | { readonly as: "date"; readonly value: string }
  | { readonly as: "text" | "boolean" | "error" | "lost-formula" };

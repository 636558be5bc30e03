import type { DecimalMark } from "./atom.ts";
import { atomValue, decimalsOf } from "./atom.ts";
import type { QuantityDraft } from "./quantity-draft.ts";

type Amount = { readonly value: number; readonly uncertainty?: number };

/** Value and uncertainty of a draft under a decimal mark, null where there is none: falling ranges, wrong groups, odd denominators. */
export function amountOf(draft: QuantityDraft, mark: DecimalMark, percentUnit: boolean): Amount | null {
  const value = atomValue(draft.first, mark);
  if (value === null) return null;
  if (draft.form === "plain") return { value };
  if (draft.form === "digits") {
    const places = draft.first.shape === "numeral" ? decimalsOf(draft.first, mark) : 0;
    return { value, uncertainty: Number(`${draft.digits}e-${places}`) };
  }
  const second = draft.second === null ? null : atomValue(draft.second, mark);
  if (second === null) return null;
  if (draft.form === "range")
    return second < value ? null : { value: (value + second) / 2, uncertainty: (second - value) / 2 };
  if (second < 0) return null;
  return { value, uncertainty: draft.percent && !percentUnit ? (Math.abs(value) * second) / 100 : second };
}

import type { Entry } from "../../../language/index.ts";
import { amountResult } from "../../amount-result.ts";
import type { Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import type { EntryPart } from "../../entry-kind.ts";

/** A value on its ruled line: name, formula, amount with uncertainty. */
export function viewValue(entry: Entry, _key: string, inputs: Inputs): EntryPart | null {
  const amount = inputs.get(cells.amount(entry.name));
  if (!amount.ok) return null;
  const { value, words } = amountResult(amount.value);
  const formula = entry.body.trim().replace(/\s+/g, " ");
  return {
    value,
    view: {
      kind: "amount",
      name: entry.name,
      formula,
      amount: words,
      value: value.value,
      unit: value.unit,
      trace: { steps: [{ what: "formula", says: `${entry.name} is ${formula}`, formula }] },
    },
  };
}

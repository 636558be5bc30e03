import { fromSi, unitFromCode } from "../../../../core/units/index.ts";
import type { Entry } from "../../../language/index.ts";
import { amountResult } from "../../amount-result.ts";
import type { Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import type { EntryPart } from "../../entry-kind.ts";

/** A dial as a slider in its own unit. */
export function viewDial(entry: Entry, _key: string, inputs: Inputs): EntryPart | null {
  const dial = inputs.get(cells.dial(entry.name));
  if (!dial.ok) return null;
  const { value, low, high, step, unit } = dial.value;
  const known = unitFromCode(unit);
  return {
    value: amountResult({ value, unit, uncertainty: null }).value,
    view: {
      kind: "slider",
      name: entry.name,
      value: fromSi(value, known),
      from: fromSi(low, known),
      to: fromSi(high, known),
      step: step / known.factor,
      unit,
    },
  };
}

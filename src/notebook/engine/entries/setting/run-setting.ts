import { dimensionInWords, sameDimension, toSi, unitFromCode, unitFromText } from "../../../../core/units/index.ts";
import type { AmountAt, NameAt } from "../../../language/index.ts";
import { type CellAmount, type Computed, computed, type LocalProblem } from "../../cell.ts";
import type { DialState } from "../../cells.ts";

/** Positions in SI, each in the dimension of its dial. */
export function runSetting(
  dials: readonly { readonly dial: NameAt; readonly amount: AmountAt }[],
  stateOf: (name: string) => DialState | null,
): Computed<ReadonlyMap<string, CellAmount>> {
  const positions = new Map<string, CellAmount>();
  const remarks: LocalProblem[] = [];
  for (const { dial, amount } of dials) {
    const state = stateOf(dial.name);
    const unit = amount.unit === null ? unitFromCode("1") : unitFromText(amount.unit);
    if (!unit)
      remarks.push({ code: "unknown-unit", facts: { unit: amount.unit ?? "" }, span: amount.unitSpan ?? amount });
    else if (!state) remarks.push({ code: "waits-for", facts: { name: dial.name }, span: dial });
    else if (!sameDimension(unit.dimension, unitFromCode(state.unit).dimension)) {
      const [left, right] = [dimensionInWords(unitFromCode(state.unit).dimension), dimensionInWords(unit.dimension)];
      remarks.push({ code: "wrong-dimension", facts: { left, right, doing: "A setting" }, span: amount });
    } else positions.set(dial.name, { value: toSi(amount.value, unit), unit: state.unit, uncertainty: null });
  }
  return computed(positions, remarks);
}

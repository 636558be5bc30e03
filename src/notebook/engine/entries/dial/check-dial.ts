import {
  dimensionInWords,
  sameDimension,
  toSi,
  type Unit,
  unitFromCode,
  unitFromText,
} from "../../../../core/units/index.ts";
import type { AmountAt, Entry } from "../../../language/index.ts";
import { computed, failed, type LocalProblem, needs } from "../../cell.ts";
import { cells, type DialState } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import type { Surroundings } from "../../surroundings.ts";
import type { DialSpec } from "./dial-spec.ts";
import { runDial } from "./run-dial.ts";

/** Amounts of a dial to SI; all of one dimension. */
export function checkDial(entry: Entry, _key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "dial") return onlyProblems();
  const { start, low, high, step } = entry.syntax;
  const problems: LocalProblem[] = [];
  const main = unitOf(start, problems);
  const si = (amount: AmountAt): number => {
    const unit = amount === start ? main : unitOf(amount, problems);
    if (unit && main && !sameDimension(unit.dimension, main.dimension)) {
      problems.push({
        code: "wrong-dimension",
        facts: { left: dimensionInWords(main.dimension), right: dimensionInWords(unit.dimension), doing: "A dial" },
        span: amount,
      });
    }
    return unit ? toSi(amount.value, unit) : amount.value;
  };
  const spec: DialSpec = {
    start: si(start),
    low: si(low),
    high: si(high),
    step: step ? si(step) : null,
    unit: main?.code ?? "1",
    stands: around.dialStands.get(entry.name) ?? null,
  };
  if (spec.low >= spec.high)
    problems.push({
      code: "syntax",
      facts: { found: "This range", expected: "a smaller amount after `from` than after `to`" },
      span: { from: low.from, to: high.to },
    });
  if (problems.length > 0) return onlyProblems(...problems);
  const [dial, amount] = [cells.dial(entry.name), cells.amount(entry.name)];
  return {
    problems,
    shows: dial,
    cells: [
      {
        cell: dial,
        says: entry.name,
        base: 0,
        needs: [],
        key: JSON.stringify(spec),
        run: () => computed(runDial(spec)),
      },
      {
        cell: amount,
        says: entry.name,
        base: 0,
        needs: [needs(dial)],
        key: "amount of dial",
        run: (inputs) => {
          const state = inputs.get<DialState>(dial);
          return state.ok
            ? computed({ value: state.value.value, unit: state.value.unit, uncertainty: null })
            : failed();
        },
      },
    ],
  };
}

function unitOf(amount: AmountAt, problems: LocalProblem[]): Unit | null {
  // A bare number has no unit to read: it is a plain ratio.
  const unit = amount.unit === null ? unitFromCode("1") : unitFromText(amount.unit);
  if (!unit)
    problems.push({ code: "unknown-unit", facts: { unit: amount.unit ?? "" }, span: amount.unitSpan ?? amount });
  return unit;
}

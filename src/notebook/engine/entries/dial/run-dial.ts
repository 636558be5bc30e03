import type { DialState } from "../../cells.ts";
import type { DialSpec } from "./dial-spec.ts";

/** Where the dial stands: as turned, held within its range; a step of a hundredth of the range where none is said. */
export const runDial = (spec: DialSpec): DialState => ({
  value: Math.min(spec.high, Math.max(spec.low, spec.stands ?? spec.start)),
  low: spec.low,
  high: spec.high,
  step: spec.step ?? (spec.high - spec.low) / 100,
  unit: spec.unit,
  uncertainty: null,
});

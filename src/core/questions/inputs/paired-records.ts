import { type MethodInputs, type Needs, type Outcome, succeeded } from "../../base/index.ts";
import { completeInputs } from "./complete-inputs.ts";
import { levelFrom } from "./level-input.ts";

/** x and y of the records that have both, and the level of the intervals asked for. */
export type PairedRecords = {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly level: number;
  readonly setAside: number;
};

/** The inputs `x`, `y` and `level` of a run that takes records in pairs. Declines a level that is none, and what `needs` asks for and is not there. */
export function pairedRecords(inputs: MethodInputs, needs: Needs): Outcome<PairedRecords> {
  const level = levelFrom(inputs);
  if (!level.ok) return level;
  const complete = completeInputs(inputs, ["x", "y"], [], needs);
  if (!complete.ok) return complete;
  const { x = new Float64Array(), y = new Float64Array() } = complete.value.arrays;
  return succeeded({ x, y, level: level.value, setAside: complete.value.setAside });
}

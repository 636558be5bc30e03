// The level of intervals, which most methods take: how sure the interval is to cover the true value.
import type { InputSpec, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";

/** The input as a record lists it. Fields named `ci95_…` are the interval at this level. */
export const levelInput: InputSpec = {
  kind: "number",
  optional: true,
  meaning: "level of the intervals, above 0 and below 1; 0.95 unless given",
};

/** No interval of a smaller level says anything, and quantiles that close to the middle are not computed. */
const SMALLEST = 1e-6;

/** The level of a run, 0.95 where none is given. Refuses what is not between a millionth and 1. */
export function levelFrom({ level = 0.95 }: MethodInputs): Outcome<number> {
  return typeof level === "number" && level >= SMALLEST && level < 1
    ? succeeded(level)
    : declined("out-of-domain", { name: "level", needed: "a number between 0.000001 and 1" });
}

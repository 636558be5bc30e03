import type { Estimate } from "../base/index.ts";
import { fromSi, scaleFactor, unitFromCode } from "../units/index.ts";

/** An estimate in SI: a place (`is: "level"`, moved by a scale's offset) or a difference (factor only). */
export type SiEstimate = {
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly standardError?: number;
  readonly degreesOfFreedom?: number;
};

/** An SI estimate in the unit in which it is shown. */
export function shownEstimate(estimate: SiEstimate, unit: string, is: "level" | "difference"): Estimate {
  const shown = unitFromCode(unit);
  const into = (value: number) => (is === "level" ? fromSi(value, shown) : value / scaleFactor(unit));
  return {
    name: estimate.name,
    value: into(estimate.value),
    low: into(estimate.low),
    high: into(estimate.high),
    level: 0.95,
    unit,
    ...(estimate.standardError === undefined ? {} : { standardError: estimate.standardError / scaleFactor(unit) }),
    ...(estimate.degreesOfFreedom === undefined ? {} : { degreesOfFreedom: estimate.degreesOfFreedom }),
  };
}

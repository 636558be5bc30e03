import type { Estimate } from "../../base/index.ts";

/** An estimate of a slope in its shown unit. */
export function slopeEstimate(
  name: string,
  value: number,
  half: number,
  standardError: number,
  degreesOfFreedom: number,
  shown: { factor: number; unit: string },
): Estimate {
  const by = shown.factor;
  return {
    name,
    value: value * by,
    low: (value - half) * by,
    high: (value + half) * by,
    level: 0.95,
    unit: shown.unit,
    standardError: standardError * by,
    degreesOfFreedom,
  };
}

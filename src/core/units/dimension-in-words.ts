import type { Dimension } from "./dimension.ts";
import { isDimensionless, sameDimension } from "./dimension.ts";
import { coherentUnit } from "./quotient-unit.ts";
import { unitForDisplay } from "./unit-for-display.ts";

const NAMES: readonly (readonly [string, Dimension])[] = [
  ["length", { length: [1, 1] }],
  ["area", { length: [2, 1] }],
  ["volume", { length: [3, 1] }],
  ["mass", { mass: [1, 1] }],
  ["time", { time: [1, 1] }],
  ["frequency", { time: [-1, 1] }],
  ["speed", { length: [1, 1], time: [-1, 1] }],
  ["density", { mass: [1, 1], length: [-3, 1] }],
  ["mass per area", { mass: [1, 1], length: [-2, 1] }],
  ["mass per length", { mass: [1, 1], length: [-1, 1] }],
  ["force", { mass: [1, 1], length: [1, 1], time: [-2, 1] }],
  ["pressure", { mass: [1, 1], length: [-1, 1], time: [-2, 1] }],
  ["temperature", { temperature: [1, 1] }],
  ["angle", { angle: [1, 1] }],
  ["pitch interval", { cents: [1, 1] }],
  ["moisture content", { moisture: [1, 1] }],
  ["sound level", { level: [1, 1] }],
];

/** A dimension as a maker would say it: "length", "pressure", "a plain number"; without a name of its own, by its SI unit ("N·m"). */
export function dimensionInWords(dimension: Dimension): string {
  if (isDimensionless(dimension)) return "a plain number";
  return NAMES.find(([, named]) => sameDimension(named, dimension))?.[0] ?? unitForDisplay(coherentUnit(dimension));
}

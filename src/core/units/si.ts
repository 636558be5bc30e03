// Conversion at the doors: inside, every number is in coherent SI.
import type { Unit } from "./unit.ts";

/** The SI value of `value` in `unit`: value * factor + offset. A temperature on a scale becomes kelvin. */
export const toSi = (value: number, unit: Unit): number =>
  (unit.factor < 1 ? value / unit.inverse : value * unit.factor) + unit.offset;

/** The value in `unit` of an SI value: (value - offset) / factor. */
export const fromSi = (value: number, unit: Unit): number =>
  unit.factor < 1 ? (value - unit.offset) * unit.inverse : (value - unit.offset) / unit.factor;

/** The two directions together, for who converts whole columns. */
export const si = { to: toSi, from: fromSi } as const;

import type { Caution } from "../base/index.ts";
import { densityCautions } from "./density-cautions.ts";
import type { UsualRange } from "./usual-ranges.ts";

type Ranged = { readonly dimension?: string; readonly usual?: UsualRange };

/** Units in which makers say a quantity, by its coherent SI unit: a factor, an offset and the unit's name. */
const shownIn: Readonly<Record<string, readonly [factor: number, offset: number, unit: string]>> = {
  Pa: [1e-9, 0, " GPa"],
  m: [1e3, 0, " mm"],
  K: [1, -273.15, " °C"],
  "%MC": [100, 0, " %"],
  m3: [1e3, 0, " L"],
  "1": [1, 0, ""],
  "m4/(kg.s)": [1, 0, " m4/(kg s)"],
};
const inWords = (value: number, dimension = "1"): string => {
  const [factor, offset, unit] = shownIn[dimension] ?? [1, 0, ` ${dimension}`];
  return `${Number((value * factor + offset).toPrecision(3))}${unit}`;
};

/** The cautions of values that lie outside their usual range, each by its name. Values that are not given, or are no numbers, call for none. */
export const usualCautions = (
  specs: Readonly<Record<string, Ranged>>,
  values: Readonly<Record<string, unknown>>,
): readonly Caution[] =>
  Object.entries(specs).flatMap(([name, { dimension, usual }]): readonly Caution[] => {
    const value = values[name];
    if (!usual || typeof value !== "number" || !Number.isFinite(value)) return [];
    const [low, high] = usual;
    if (value >= low && value <= high) return [];
    if (dimension === "kg/m3") return densityCautions(value);
    const facts = {
      name,
      value: inWords(value, dimension),
      low: inWords(low, dimension),
      high: inWords(high, dimension),
    };
    return [{ code: "unusual-size", facts }];
  });

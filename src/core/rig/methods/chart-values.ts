import { declined, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { inputNumbers } from "./input-numbers.ts";

/** Readings of a chart in their order, and the place of each in the list as given, counted from 1: a missing reading is left out. */
export type ChartValues = { readonly values: readonly number[]; readonly places: readonly number[] };

/** The readings `x` of a chart. Declines an infinite reading and fewer than `need`. */
export function chartValues(inputs: MethodInputs, need: number): Outcome<ChartValues> {
  const all = inputNumbers(inputs.x);
  const infinite = all.findIndex((value) => Math.abs(value) === Number.POSITIVE_INFINITY);
  if (infinite >= 0) return declined("not-finite", { name: `x, reading ${infinite + 1}` });
  const places = all.flatMap((value, at) => (Number.isNaN(value) ? [] : [at + 1]));
  if (places.length < need) return declined("too-few-records", { have: places.length, need });
  return succeeded({ values: all.filter((value) => !Number.isNaN(value)), places });
}

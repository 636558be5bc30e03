import { declined, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { oneColumn } from "./one-column.ts";

export type TwoSamples = { readonly a: Float64Array; readonly b: Float64Array; readonly setAside: number };

/** The values of two groups, missing ones left out; at least `need` in each. Declines what is no list of finite numbers. */
export function twoSamples(inputs: MethodInputs, need: number): Outcome<TwoSamples> {
  const [a, b] = [oneColumn(inputs, "a", 0), oneColumn(inputs, "b", 0)];
  if (!a.ok) return a;
  if (!b.ok) return b;
  const fewest = Math.min(a.value.values.length, b.value.values.length);
  if (fewest < need) return declined("too-few-records", { have: fewest, need });
  return succeeded({ a: a.value.values, b: b.value.values, setAside: a.value.setAside + b.value.setAside });
}

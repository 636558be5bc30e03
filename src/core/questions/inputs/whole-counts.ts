import type { MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";

/** Larger counts belong to no shop, and their factorials lose digits. */
const MOST = 1e7;

/** Whole numbers of zero or more, by name and in that order. Declines the first input that is none. */
export function wholeCounts(inputs: MethodInputs, names: readonly string[]): Outcome<readonly number[]> {
  const counts: number[] = [];
  for (const name of names) {
    const count = inputs[name];
    if (typeof count !== "number" || !Number.isInteger(count) || count < 0 || count > MOST)
      return declined("out-of-domain", { name, needed: "a whole number of zero or more" });
    counts.push(count);
  }
  return succeeded(counts);
}

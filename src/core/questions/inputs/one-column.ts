import { declined, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";

/** The numbers of one column in their order, and how many records were missing. */
export type OneColumn = { readonly values: Float64Array; readonly setAside: number };

/**
 * The column of a method that takes one: a missing value (NaN or null) is left out. Declines what is no list of numbers, an infinite value, which is
 * no reading, and fewer than `need` values.
 */
export function oneColumn(inputs: MethodInputs, name: string, need: number): Outcome<OneColumn> {
  const given = inputs[name];
  const list: readonly unknown[] | null =
    typeof given === "number"
      ? [given]
      : given instanceof Float64Array
        ? [...given]
        : Array.isArray(given)
          ? given
          : null;
  if (list === null) return declined("out-of-domain", { name, needed: "a list of numbers" });
  const values: number[] = [];
  for (const [at, value] of list.entries()) {
    if (value === null || (typeof value === "number" && Number.isNaN(value))) continue;
    if (typeof value !== "number") return declined("out-of-domain", { name, needed: "a list of numbers" });
    if (!Number.isFinite(value)) return declined("not-finite", { name: `${name}, record ${at + 1}` });
    values.push(value);
  }
  if (values.length < need) return declined("too-few-records", { have: values.length, need });
  return succeeded({ values: Float64Array.from(values), setAside: list.length - values.length });
}

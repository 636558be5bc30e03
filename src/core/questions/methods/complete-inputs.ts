import type { MethodInputs, Needs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { firstLacking } from "../first-lacking.ts";

/** The rows of a run that have every value: arrays by input name, labels by input name, and how many rows were set aside. */
export type CompleteInputs = {
  readonly arrays: Readonly<Record<string, Float64Array>>;
  readonly labels: Readonly<Record<string, readonly string[]>>;
  readonly rows: number;
  readonly setAside: number;
};

const isList = (value: unknown): value is readonly unknown[] | Float64Array =>
  Array.isArray(value) || value instanceof Float64Array;

/**
 * Takes the named inputs of a run, leaves out rows with a missing value (NaN or null) and checks what the method needs. Arrays must be of one
 * length. An infinite value is refused with its record, for it is no reading.
 */
export function completeInputs(
  inputs: MethodInputs,
  quantities: readonly string[],
  labels: readonly string[],
  needs: Needs,
): Outcome<CompleteInputs> {
  const lists = [...quantities, ...labels].map((name) => inputs[name]);
  const length = isList(lists[0]) ? lists[0].length : 0;
  for (const [at, list] of lists.entries())
    if (!isList(list) || list.length !== length)
      return declined("out-of-domain", {
        name: [...quantities, ...labels][at] ?? "input",
        needed: "a list as long as the others",
      });
  const all = lists as readonly (readonly unknown[])[];
  const kept: number[] = [];
  for (let row = 0; row < length; row++) {
    const whole = all.every((list, at) =>
      at < quantities.length
        ? typeof list[row] === "number" && !Number.isNaN(list[row])
        : typeof list[row] === "string",
    );
    if (whole) kept.push(row);
    else if (all.some((list, at) => at < quantities.length && /Infinity/.test(String(list[row]))))
      return declined("not-finite", { name: `record ${row + 1}` });
  }
  const arrays = Object.fromEntries(
    quantities.map((name, at) => [name, Float64Array.from(kept, (row) => Number(all[at]?.[row]))]),
  );
  const texts = Object.fromEntries(
    labels.map((name, at) => [name, kept.map((row) => String(all[quantities.length + at]?.[row]))]),
  );
  const groups = labels[0] === undefined ? undefined : new Set(texts[labels[0]]).size;
  const lack = firstLacking(needs, { rows: kept.length, arrays, ...(groups === undefined ? {} : { groups }) });
  if (lack) return { ok: false, refusal: lack };
  return succeeded({ arrays, labels: texts, rows: kept.length, setAside: length - kept.length });
}

/** A list of plain numbers for JSON; null where a field is withheld. */
export const plain = (values: ArrayLike<number>): (number | null)[] =>
  Array.from(values, (value) => (Number.isFinite(value) ? value : null));

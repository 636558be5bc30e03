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

/** Strikes the rows where a list has no number; the first row with an infinite one, or -1. */
function strikeMissing(list: readonly unknown[] | Float64Array, kept: Uint8Array): number {
  for (let row = 0; row < list.length; row++) {
    const value = list[row];
    if (typeof value === "number" && Number.isFinite(value)) continue;
    if (value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY) return row;
    kept[row] = 0;
  }
  return -1;
}

function strikeUnlabelled(list: readonly unknown[] | Float64Array, kept: Uint8Array): number {
  for (let row = 0; row < list.length; row++) if (typeof list[row] !== "string") kept[row] = 0;
  return -1;
}

function keptNumbers(list: readonly unknown[] | Float64Array, kept: Uint8Array, rows: number): Float64Array {
  if (list instanceof Float64Array && rows === list.length) return list.slice();
  const numbers = new Float64Array(rows);
  let at = 0;
  for (let row = 0; row < list.length; row++) if (kept[row] === 1) numbers[at++] = Number(list[row]);
  return numbers;
}

const keptTexts = (list: readonly unknown[] | Float64Array, kept: Uint8Array): string[] =>
  Array.from(list, String).filter((_, row) => kept[row] === 1);

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
  const all = lists as readonly (readonly unknown[] | Float64Array)[];
  const kept = new Uint8Array(length).fill(1);
  for (const [at, list] of all.entries()) {
    const infinite = at < quantities.length ? strikeMissing(list, kept) : strikeUnlabelled(list, kept);
    if (infinite >= 0)
      return declined("not-finite", { name: `record ${infinite + 1} of ${quantities[at] ?? "the input"}` });
  }
  const rows = kept.reduce((count, one) => count + one, 0);
  const numbers = all.slice(0, quantities.length).map((list) => keptNumbers(list, kept, rows));
  const arrays = Object.fromEntries(quantities.map((name, at) => [name, numbers[at] ?? new Float64Array()]));
  const texts = Object.fromEntries(
    labels.map((name, at) => [name, keptTexts(all[quantities.length + at] ?? [], kept)]),
  );
  const groups = labels[0] === undefined ? undefined : new Set(texts[labels[0]]).size;
  const lack = firstLacking(needs, { rows, arrays, ...(groups === undefined ? {} : { groups }) });
  if (lack) return { ok: false, refusal: lack };
  return succeeded({ arrays, labels: texts, rows, setAside: length - rows });
}

/** A list of plain numbers for JSON; null where a field is withheld. */
export function plain(values: ArrayLike<number>): (number | null)[] {
  const list = new Array<number | null>(values.length);
  for (let at = 0; at < values.length; at++) {
    const value = values[at] as number;
    list[at] = Number.isFinite(value) ? value : null;
  }
  return list;
}

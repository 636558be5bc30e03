// What an entry showed last time, kept while every cell it looked at still holds the same value.
import type { Cell, Computed, Inputs } from "./cell.ts";
import type { EntryPart } from "./entry-kind.ts";

type Kept = {
  readonly body: string;
  readonly looked: readonly (readonly [Cell<unknown>, Computed<unknown>])[];
  readonly part: EntryPart | null;
};

/** Makes the part of an entry, or hands on the last one. Owned by one engine. */
export type PartCache = (
  key: string,
  body: string,
  inputs: Inputs,
  make: (inputs: Inputs) => EntryPart | null,
) => EntryPart | null;

/** An empty cache. */
export function partCache(): PartCache {
  const kept = new Map<string, Kept>();
  return (key, body, inputs, make) => {
    const last = kept.get(key);
    if (last && last.body === body && last.looked.every(([cell, value]) => inputs.get(cell) === value))
      return last.part;
    const looked: (readonly [Cell<unknown>, Computed<unknown>])[] = [];
    const noting: Inputs = {
      get: <T>(cell: Cell<T>) => {
        const value = inputs.get(cell);
        looked.push([cell, value]);
        return value;
      },
    };
    const part = make(noting);
    kept.set(key, { body, looked, part });
    return part;
  };
}

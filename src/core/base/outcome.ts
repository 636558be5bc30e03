import type { Refusal, refusals } from "./refusals.ts";

/** What a fallible function returns: the value, or a refusal that says what would be needed. */
export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: Refusal };

/** The outcome that holds a value. */
export const succeeded = <T>(value: T): Outcome<T> => ({ ok: true, value });

/** The outcome that declines: a code of the catalogue and its facts. */
export function declined<C extends keyof typeof refusals>(
  code: C,
  facts: Parameters<(typeof refusals)[C]>[0],
): { readonly ok: false; readonly refusal: Refusal } {
  return { ok: false, refusal: { code, facts } as Refusal };
}

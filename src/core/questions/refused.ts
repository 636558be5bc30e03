import type { Refusal, Refused } from "../base/index.ts";
import { refusals } from "../base/index.ts";

/** A finding that declines: the code, its facts and the sentence of the one catalogue. `needed`: what it would take, where the sentence does not say it. */
export function refused<C extends keyof typeof refusals>(
  code: C,
  facts: Parameters<(typeof refusals)[C]>[0],
  needed?: string,
): Refused {
  const sentence = (refusals[code] as (facts: Parameters<(typeof refusals)[C]>[0]) => string)(facts);
  return { kind: "refused", code, facts, sentence, ...(needed === undefined ? {} : { needed }) };
}

/** The finding of a method's own refusal. */
export const refusedAs = ({ code, facts }: Refusal): Refused => refused(code, facts as never);

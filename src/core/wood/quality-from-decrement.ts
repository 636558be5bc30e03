import { lossFields, lossSpecs, qualitySpec } from "./loss-fields.ts";
import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Quality factor from two amplitudes n swings apart: decrement = ln(first/later)/n, Q = pi/decrement. first > later > 0. Source: single lightly damped resonator.
 */
export const qualityFromDecrement = (first: number, later: number, swings: number): number =>
  (Math.PI * swings) / Math.log(first / later);

export const qualityFromDecrementMethod = woodMethod({
  id: "quality-from-decrement",
  name: "quality factor from the logarithmic decrement",
  inputs: {
    first: positive("1", "first amplitude"),
    later: positive("1", "later amplitude, same unit"),
    swings: positive("1", "swings between them"),
  },
  fields: {
    quality: qualitySpec,
    ...lossSpecs,
  },
  source: sources.resonance,
  refuses: ({ first, later }) =>
    later < first ? null : { name: "later (later amplitude)", needed: "a value below the first amplitude" },
  run: ({ first, later, swings }) => {
    const quality = qualityFromDecrement(first, later, swings);
    return { quality, ...lossFields(quality) };
  },
});

import { centsBetween } from "../units/index.ts";
import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/** How far one frequency lies above another: 1200 log2(to / from) cents; below it, negative. Source: equal temperament, ISO 16. */
export const intervalCents = centsBetween;

export const intervalCentsMethod = woodMethod({
  id: "interval-cents",
  name: "interval between two frequencies",
  inputs: { from: positive("Hz", "first frequency"), to: positive("Hz", "second frequency") },
  fields: {
    cents: { meaning: "how far the second lies above the first", dimension: "{cent}" },
    ratio: { meaning: "second over first", dimension: "1" },
  },
  source: sources.temperament,
  run: ({ from, to }) => ({ cents: intervalCents(from, to), ratio: to / from }),
});

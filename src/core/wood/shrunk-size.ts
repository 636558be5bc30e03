import { dryness } from "./fibre-saturation.ts";
import { fibreSaturationCautions } from "./fibre-saturation-cautions.ts";
import { sources } from "./sources.ts";
import { moistureInput, notNegative, positive, woodMethod } from "./wood-method.ts";

const bracket = (moisture: number, shrinkage: number) => 1 - shrinkage * dryness(moisture);

/**
 * A size at another moisture content: size (1 - S a(to)) / (1 - S a(from)), a = (0.30 - M)/0.30, 0 above 0.30.
 * size: m; from, to: fractions; shrinkage S: to oven-dry in this direction, fraction of the green size. Result: m. Source: Wood Handbook, chapter 4.
 * @example shrunkSize(0.2, 0.12, 0.07, 0.043) -> 0.19853
 */
export const shrunkSize = (size: number, from: number, to: number, shrinkage: number): number =>
  (size * bracket(to, shrinkage)) / bracket(from, shrinkage);

export const shrunkSizeMethod = woodMethod({
  id: "shrunk-size",
  name: "size at another moisture content",
  inputs: {
    size: positive("m", "size as found"),
    from: moistureInput("moisture as found"),
    to: moistureInput("moisture wanted"),
    shrinkage: { ...notNegative("1", "shrinkage to oven-dry, fraction of green"), below: 1 },
  },
  fields: { size: { meaning: "size at the wanted moisture", dimension: "m" } },
  source: sources.handbook,
  run: ({ size, from, to, shrinkage }) => ({ size: shrunkSize(size, from, to, shrinkage) }),
  cautions: ({ from, to }) => fibreSaturationCautions(from, to),
});

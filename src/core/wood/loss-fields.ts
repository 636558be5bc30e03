import type { FieldSpec } from "../base/index.ts";
import { usualRanges } from "./usual-ranges.ts";
import type { WoodField } from "./wood-method.ts";

type LossFields = { readonly lossTangent: number; readonly dampingRatio: number; readonly decrement: number };

/** The other names of a loss: tan delta = 1/Q, zeta = 1/(2Q), decrement = pi/Q. Source: single lightly damped resonator. */
export const lossFields = (quality: number): LossFields => ({
  lossTangent: 1 / quality,
  dampingRatio: 0.5 / quality,
  decrement: Math.PI / quality,
});

export const qualitySpec: WoodField = {
  meaning: "quality factor Q",
  dimension: "1",
  usual: usualRanges.quality,
};

export const lossSpecs = {
  lossTangent: { meaning: "1/Q", dimension: "1" },
  dampingRatio: { meaning: "1/(2Q)", dimension: "1" },
  decrement: { meaning: "logarithmic decrement, pi/Q", dimension: "1" },
} as const satisfies Readonly<Record<keyof LossFields, FieldSpec>>;

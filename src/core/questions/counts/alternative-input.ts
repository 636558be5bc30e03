// On which side a test looks: both, or one that was named before the data were seen.
import type { InputSpec, MethodInputs } from "../../base/index.ts";

export type Alternative = "two-sided" | "greater" | "less";

/** The input as a record lists it. */
export const alternativeInput: InputSpec = {
  kind: "choice",
  choices: ["two-sided", "greater", "less"],
  optional: true,
  meaning: "side that is looked at: two-sided, greater or less; two-sided unless given",
};

/** The side of a run, both unless it says otherwise. */
export const alternativeFrom = ({ alternative }: MethodInputs): Alternative =>
  alternative === "greater" || alternative === "less" ? alternative : "two-sided";

/** The side of a planned test: one-sided means the side on which the effect is thought to lie. */
export const plannedAlternativeInput: InputSpec = {
  kind: "choice",
  choices: ["two-sided", "one-sided", "greater", "less"],
  optional: true,
  meaning: "two-sided unless given; one-sided looks on the side of the effect alone, greater above zero, less below",
};

/** An effect as a planned test sees it: from zero up where it looks on one side, and on how many sides it looks. */
export function plannedEffect({ alternative }: MethodInputs, effect: number): readonly [effect: number, sides: 1 | 2] {
  if (alternative === "greater") return [effect, 1];
  if (alternative === "less") return [-effect, 1];
  return [Math.abs(effect), alternative === "one-sided" ? 1 : 2];
}

/** What the interval that goes with a side leaves outside below and above, at a level. */
export function tailsOf(alternative: Alternative, level: number): readonly [lower: number, upper: number] {
  const outside = 1 - level;
  return alternative === "greater" ? [outside, 0] : alternative === "less" ? [0, outside] : [outside / 2, outside / 2];
}

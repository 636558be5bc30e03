import type { Caution, Check } from "../../base/index.ts";
import { tTwoSided } from "../../numerics/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { influenceMeasures } from "../fits/influence-measures.ts";
import type { LinearFit } from "../fits/linear-fit.ts";
import { bendCheck } from "./bend-check.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";

type Found = { readonly checks: readonly Check[]; readonly cautions: readonly Caution[] };

/** A check that fails when a p lies under its limit. */
const pCheck = (id: string, name: string, value: number, limit: number, well: string, ill: string): Check => ({
  id,
  name,
  value,
  limit,
  passed: value >= limit,
  sentence: value >= limit ? well : ill,
});

/** Even scatter, straightness, records far outside, and for a power law the exponent −1/3. */
export function shapeChecks(input: RelationInput, design: RelationDesign, fit: LinearFit, spreadP: number): Found {
  const x = input.x[0];
  const first = design.x[0];
  if (!x || !first) return { checks: [], cautions: [] };
  const [xWords, yWords] = [columnInWords(x), columnInWords(input.y)];
  const bendP = bendCheck(design.columns, first, design.y);
  const { outlierP } = influenceMeasures(fit);
  const checks = [
    pCheck(
      "even-spread",
      "even scatter",
      spreadP,
      0.05,
      `The scatter is the same whatever the ${xWords}.`,
      `The scatter changes with the ${xWords}.`,
    ),
    pCheck(
      "straight",
      "straight line",
      bendP,
      0.01,
      `The records follow a straight line as far as can be told.`,
      `The records bend with the ${xWords}.`,
    ),
    pCheck(
      "far-outside",
      "records far outside",
      outlierP,
      0.05,
      "No record lies further out than chance alone would scatter.",
      "One record lies further out than chance alone would scatter.",
    ),
  ];
  const cautions: Caution[] = [];
  if (spreadP < 0.05) cautions.push({ code: "unequal-spread", facts: { column: xWords } });
  if (bendP < 0.01) cautions.push({ code: "not-straight", facts: { column: xWords } });
  if (outlierP < 0.05) cautions.push({ code: "not-normal", facts: { column: yWords } });
  const at = design.slopes[0] ?? 0;
  const third = input.powerLaw
    ? tTwoSided(((fit.coefficients[at] ?? 0) + 1 / 3) / (fit.standardErrors[at] ?? 1), fit.degreesOfFreedom)
    : 1;
  if (input.powerLaw)
    checks.push(
      pCheck(
        "exponent-one-third",
        "exponent −1/3",
        third,
        0.05,
        "The exponent agrees with −1/3, that of plates planed to one stiffness.",
        "The exponent is not −1/3, that of plates planed to one stiffness.",
      ),
    );
  return { checks, cautions };
}

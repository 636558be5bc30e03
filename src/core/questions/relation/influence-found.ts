import type { Caution, Check } from "../../base/index.ts";
import type { LinearFit } from "../fits/linear-fit.ts";
import { carryingPiece } from "./carrying-piece.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";
import { slopeWithout } from "./slope-clause.ts";
import { slopeEstimate } from "./slope-estimate.ts";

/** Whether one piece carries the slope: what it would be without, as a check, and a caution where it matters. */
export function influenceFound(
  input: RelationInput,
  design: RelationDesign,
  fit: LinearFit,
): { checks: Check[]; cautions: Caution[] } {
  const place = design.slopes[0] ?? 0;
  const carrying = carryingPiece(fit, design.y, place);
  const piece = carrying ? design.sample.rows[carrying.at]?.piece : undefined;
  const shown = design.shown[0];
  if (!carrying || piece === undefined || !shown) return { checks: [], cautions: [] };
  const without = slopeWithout(
    slopeEstimate(
      "without",
      carrying.value,
      carrying.high - carrying.value,
      carrying.standardError,
      fit.degreesOfFreedom - 1,
      shown,
    ),
  ).replace("the slope", input.powerLaw ? "the exponent" : "the slope");
  const passed = !carrying.turns && Math.abs(carrying.dfbetas) <= 1;
  const check: Check = {
    id: "influence",
    name: "one piece carries it",
    value: Math.abs(carrying.dfbetas),
    limit: 1,
    passed,
    sentence: `Without ${piece}, ${without}.`,
  };
  return { checks: [check], cautions: passed ? [] : [{ code: "one-piece-carries-it", facts: { piece, without } }] };
}

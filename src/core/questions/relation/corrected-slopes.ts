import type { Caution, Check, Estimate } from "../../base/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { flattenedSlope } from "./flattened-slope.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";
import { errorCovariance, sharedErrors } from "./shared-errors.ts";

/** Share of the spread below which measurement error is left out of account. */
const LEAST_SHARE = 0.02;

/**
 * The slope without what measurement error does to it: (b - c / s^2) / (1 - share), c the covariance of errors that y and x share, s^2 the spread of x that
 * the rest of the design leaves, squared; its error by the factor 1 / (1 - share), to first order. Source: Fuller (1987), sections 1.1 and 1.2.
 */
export function correctedSlopes(
  input: RelationInput,
  design: RelationDesign,
  slopes: readonly Estimate[],
): { estimates: Estimate[]; checks: Check[]; cautions: Caution[] } {
  const found = { estimates: [] as Estimate[], checks: [] as Check[], cautions: [] as Caution[] };
  for (const [at, x] of input.x.entries()) {
    const flattened = flattenedSlope(x, design, at, input.powerLaw);
    const slope = slopes[at];
    if (!flattened || !slope) continue;
    const moved =
      (errorCovariance(sharedErrors(input, design, at)) / flattened.variance) * (design.shown[at]?.factor ?? 1);
    const share = `${Number((100 * Math.min(1, flattened.share)).toPrecision(2))} %`;
    const passed = flattened.share < LEAST_SHARE;
    found.checks.push({
      id: "measurement-error",
      name: `measurement error of ${columnInWords(x)}`,
      value: flattened.share,
      limit: LEAST_SHARE,
      passed,
      sentence: passed
        ? `Measurement error of ${columnInWords(x)} is too small to matter.`
        : `Measurement error makes up ${share} of the spread of ${columnInWords(x)}.`,
    });
    if (passed && Math.abs(moved) < LEAST_SHARE * Math.abs(slope.value)) continue;
    if (!passed)
      found.cautions.push({ code: "measurement-error-flattens", facts: { column: columnInWords(x), share } });
    const by = 1 / (1 - flattened.share);
    if (flattened.share < 0.8)
      found.estimates.push({
        ...slope,
        name: `${slope.name}, corrected for measurement error`,
        value: (slope.value - moved) * by,
        low: (slope.low - moved) * by,
        high: (slope.high - moved) * by,
        ...(slope.standardError === undefined ? {} : { standardError: slope.standardError * by }),
      });
  }
  return found;
}

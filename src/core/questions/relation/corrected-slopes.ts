import type { Caution, Check, Estimate } from "../../base/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { flattenedSlope } from "./flattened-slope.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";

/** Share of the spread below which measurement error is left out of account. */
const LEAST_SHARE = 0.02;

/** The slope made steeper by what measurement error flattens: b / (1 - share), its error by the same factor, to first order. Source: Fuller (1987), section 1.2. */
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
    if (passed) continue;
    found.cautions.push({ code: "measurement-error-flattens", facts: { column: columnInWords(x), share } });
    const by = 1 / (1 - flattened.share);
    if (flattened.share < 0.8)
      found.estimates.push({
        ...slope,
        name: `${slope.name}, corrected for measurement error`,
        value: slope.value * by,
        low: slope.low * by,
        high: slope.high * by,
        ...(slope.standardError === undefined ? {} : { standardError: slope.standardError * by }),
      });
  }
  return found;
}
